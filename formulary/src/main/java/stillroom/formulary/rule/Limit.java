package stillroom.formulary.rule;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a rule row measures.
 *
 * @param percent highest mass percent of the ready product [%]; empty where the row has no figure
 * @param counting each substance alone, or the sum of all that the row names
 * @param expressedAs key of the substance as which the figure is counted, {@code ion:zinc} or {@code element:aluminium};
 *     empty: as it is
 * @param expressedMolarMassGramsPerMol its molar mass [g/mol]
 * @param contents by substance, what the row counts in 1 g of it where the row says so itself [g/g]
 * @param phMin lowest pH allowed
 * @param phMax highest pH allowed
 * @param notWith tags or keys of substances that may not stand beside it; {@code other-line:key} forbids the substance
 *     only where another line brings it
 */
public record Limit(
        Optional<Double> percent,
        Counting counting,
        String expressedAs,
        Optional<Double> expressedMolarMassGramsPerMol,
        Map<String, Double> contents,
        Optional<Double> phMin,
        Optional<Double> phMax,
        Set<String> notWith) {
    /** How the shares of several substances of one row are held against its figure. */
    public enum Counting {
        EACH,
        SUM
    }

    /** Whether the row can be judged only at a known pH. */
    public boolean asksPh() {
        return phMin.isPresent() || phMax.isPresent();
    }

    public Limit {
        notWith = Set.copyOf(notWith);
        contents = Map.copyOf(contents);
        if (phMin.isPresent() && phMax.isPresent() && phMin.get() > phMax.get()) {
            throw new IllegalArgumentException("lowest pH " + phMin.get() + " lies above the highest " + phMax.get());
        }
        if (percent.isPresent() && !(percent.get() >= 0 && percent.get() <= 100)) {
            throw new IllegalArgumentException("limit is " + percent.get() + " %, allowed 0 to 100 %");
        }
        if (!expressedAs.isEmpty() && expressedMolarMassGramsPerMol.isEmpty()) {
            throw new IllegalArgumentException("a figure expressed as " + expressedAs + " needs its molar mass");
        }
    }
}
