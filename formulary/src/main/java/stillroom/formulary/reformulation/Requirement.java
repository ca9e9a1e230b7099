package stillroom.formulary.reformulation;

import java.util.List;

/**
 * A figure that is a sum over the materials, with the band that it must keep.
 *
 * @param name in the maker's words
 * @param unit such as "%"
 * @param values of a formula that is all of one candidate, in their order
 * @param min, max negative and positive infinity where there is none
 */
record Requirement(String name, String unit, List<Double> values, double min, double max, Kind kind) {
    /** What a band is about, which decides its words. */
    enum Kind {
        FIGURE,
        LAW,
        /** A mean that is kept by a sum around 0. */
        MEAN
    }

    Requirement {
        values = List.copyOf(values);
    }

    double of(List<Double> fractions) {
        double sum = 0;
        for (int j = 0; j < values.size(); j++) {
            sum += values.get(j) * fractions.get(j);
        }
        return sum;
    }
}
