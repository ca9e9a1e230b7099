package stillroom.formulary.rule;

import java.util.List;

/**
 * Something that stays to be done for every product of a kind, whatever the formula.
 *
 * @param markets market codes; empty means every market
 * @param when the products it concerns
 */
public record Duty(String id, List<String> markets, When when, String says, String mend, String source) {
    /** The products that a duty concerns. */
    public enum When {
        ALWAYS,
        WATER,
        /** Products that touch the eye. */
        EYE
    }

    public Duty {
        markets = List.copyOf(markets);
    }

    public boolean appliesIn(String market) {
        return markets.isEmpty() || markets.contains(market);
    }
}
