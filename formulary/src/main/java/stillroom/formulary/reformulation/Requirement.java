package stillroom.formulary.reformulation;

import java.util.List;
import java.util.Optional;

/**
 * A figure that is a sum over the materials, with the band that it must keep.
 *
 * @param name in the maker's words
 * @param unit such as "%"
 * @param values of a formula that is all of one candidate, in their order
 * @param min, max negative and positive infinity where there is none
 * @param mean what stands behind a sum that keeps a mean
 * @param band where it is the maker's to move
 */
record Requirement(
        String name,
        String unit,
        List<Double> values,
        double min,
        double max,
        Kind kind,
        Optional<Mean> mean,
        Optional<Band> band) {
    /** What a band is about, which decides its words. */
    enum Kind {
        FIGURE,
        LAW,
        /** A mean that is kept by a sum around 0. */
        MEAN,
        /** The same, narrower than the maker asks, as one part of its range is searched by itself: it has no price. */
        PART
    }

    /**
     * A mean over what the candidates bring: the sum of (figure - bound) times mass is 0 or more, or 0 or less.
     *
     * @param masses that count in the mean, of a formula that is all of one candidate
     * @param sums mass times figure
     * @param isLeast the bound is the least mean, else the greatest
     */
    record Mean(List<Double> masses, List<Double> sums, double bound, boolean isLeast) {
        Mean {
            masses = List.copyOf(masses);
            sums = List.copyOf(sums);
        }

        double of(List<Double> fractions) {
            return sum(sums, fractions) / sum(masses, fractions);
        }
    }

    Requirement {
        values = List.copyOf(values);
    }

    Requirement(String name, String unit, List<Double> values, double min, double max, Kind kind) {
        this(name, unit, values, min, max, kind, Optional.empty(), Optional.empty());
    }

    static Requirement of(String name, Mean mean) {
        List<Double> values = new java.util.ArrayList<>();
        for (int j = 0; j < mean.sums().size(); j++) {
            double above = mean.sums().get(j) - mean.bound() * mean.masses().get(j);
            values.add((mean.isLeast() ? above : -above) + 0.0);
        }
        return new Requirement(
                name, "", values, 0, Double.POSITIVE_INFINITY, Kind.MEAN, Optional.of(mean), Optional.empty());
    }

    Requirement with(Optional<Band> its) {
        return new Requirement(name, unit, values, min, max, kind, mean, its);
    }

    Requirement with(Band its) {
        return with(Optional.of(its));
    }

    Requirement as(Kind other) {
        return new Requirement(name, unit, values, min, max, other, mean, band);
    }

    /** What it comes to, a mean as the mean. */
    double of(List<Double> fractions) {
        return mean.map(known -> known.of(fractions)).orElseGet(() -> sum(values, fractions));
    }

    /** The same with its bounds so much higher; where one bound would pass the other, both move. */
    Requirement shifted(boolean low, double by) {
        if (mean.isPresent()) {
            Mean old = mean.get();
            return of(name, new Mean(old.masses(), old.sums(), old.bound() + by, old.isLeast()))
                    .with(band);
        }
        double least = low ? min + by : Math.min(min, max + by);
        double most = low ? Math.max(max, min + by) : max + by;
        return new Requirement(name, unit, values, least, most, kind, mean, band);
    }

    private static double sum(List<Double> values, List<Double> fractions) {
        double sum = 0;
        for (int j = 0; j < values.size(); j++) {
            sum += values.get(j) * fractions.get(j);
        }
        return sum;
    }
}
