package stillroom.formulary.rule;

import java.util.Optional;
import java.util.Set;

/**
 * What a rule row measures.
 *
 * @param percent highest mass percent of the ready product [%]; empty where the row has no figure
 * @param counting each substance alone, or the sum of all that the row names
 * @param expressedAs key of the substance as which the figure is counted, or {@code ion:zinc}; empty: as it is
 * @param expressedMolarMassGramsPerMol its molar mass [g/mol]
 * @param phMax highest pH allowed
 * @param notWith tags of substances that may not stand beside it
 */
public record Limit(
        Optional<Double> percent,
        Counting counting,
        String expressedAs,
        Optional<Double> expressedMolarMassGramsPerMol,
        Optional<Double> phMax,
        Set<String> notWith) {
    /** How the shares of several substances of one row are held against its figure. */
    public enum Counting {
        EACH,
        SUM
    }

    public Limit {
        notWith = Set.copyOf(notWith);
        if (percent.isPresent() && !(percent.get() >= 0 && percent.get() <= 100)) {
            throw new IllegalArgumentException("limit is " + percent.get() + " %, allowed 0 to 100 %");
        }
        if (!expressedAs.isEmpty() && expressedMolarMassGramsPerMol.isEmpty()) {
            throw new IllegalArgumentException("a figure expressed as " + expressedAs + " needs its molar mass");
        }
    }
}
