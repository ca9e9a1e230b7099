package stillroom.formulary.rule;

import java.util.List;

/**
 * A kind of claim that another law governs, or that asks for evidence.
 *
 * @param id stable, such as {@code claims.sun-protection}
 * @param weight whether it closes the gate or asks for evidence
 * @param markets market codes; empty means every market
 * @param words phrases of the claim, lower case, matched at word beginnings
 * @param unless phrases that take a match back ("after sun")
 * @param law which law would govern, in words
 * @param says one sentence for the maker
 */
public record GovernedClaim(
        String id,
        Weight weight,
        List<String> markets,
        List<String> words,
        List<String> unless,
        String law,
        String says,
        String source) {
    /** What follows from a match. */
    public enum Weight {
        GOVERNED("governed by another law"),
        NEEDS_EVIDENCE("needs evidence");

        private final String words;

        Weight(String words) {
            this.words = words;
        }

        /** What the maker reads. */
        public String words() {
            return words;
        }
    }

    public GovernedClaim {
        markets = List.copyOf(markets);
        words = List.copyOf(words);
        unless = List.copyOf(unless);
    }

    public boolean appliesIn(String market) {
        return markets.isEmpty() || markets.contains(market);
    }
}
