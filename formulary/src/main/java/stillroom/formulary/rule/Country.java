package stillroom.formulary.rule;

import java.util.List;
import java.util.Map;

/**
 * The law of one market as a folder of tables holds it.
 *
 * @param duties what stays to be done there
 * @param warnings wordings in the languages of the place
 * @param names the market's own names for INCI names
 * @param notCovered what the tables leave out, in words
 */
public record Country(
        MarketLaw law, List<Duty> duties, List<WarningText> warnings, Map<String, String> names, String notCovered) {
    public Country {
        duties = List.copyOf(duties);
        warnings = List.copyOf(warnings);
        names = Map.copyOf(names);
    }
}
