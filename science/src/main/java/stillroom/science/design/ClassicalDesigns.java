package stillroom.science.design;

import java.util.ArrayList;
import java.util.List;
import stillroom.science.mixture.MixtureRegion;

/** Designs on the whole simplex, as the textbooks have them. Source: scheffe-1958 (lattice), scheffe-1963 (centroid). */
public final class ClassicalDesigns {
    private ClassicalDesigns() {}

    /** The {q, m} simplex lattice: all mixtures whose fractions are multiples of 1/m. */
    public static List<Run> lattice(int components, int steps) {
        if (components < 2 || steps < 1) {
            throw new IllegalArgumentException(
                    "a lattice needs 2 components and 1 step or more, not " + components + " and " + steps);
        }
        List<Run> runs = new ArrayList<>();
        fill(new int[components], 0, steps, steps, runs);
        return runs;
    }

    private static void fill(int[] parts, int at, int left, int steps, List<Run> runs) {
        if (at == parts.length - 1) {
            parts[at] = left;
            double[] point = new double[parts.length];
            for (int i = 0; i < point.length; i++) {
                point[i] = (double) parts[i] / steps;
            }
            runs.add(Run.of(point, point.length, 1));
            return;
        }
        for (int part = left; part >= 0; part--) {
            parts[at] = part;
            fill(parts, at + 1, left - part, steps, runs);
        }
    }

    /** The simplex centroid: equal parts of each set of components, 2^q - 1 mixtures, smaller sets first. */
    public static List<Run> centroid(int components) {
        if (components < 2 || components > 12) {
            throw new IllegalArgumentException("a centroid design is made for 2 to 12 components, not " + components);
        }
        List<Run> runs = new ArrayList<>();
        for (int size = 1; size <= components; size++) {
            for (int set = (1 << components) - 1; set > 0; set--) {
                if (Integer.bitCount(set) == size) {
                    runs.add(equalParts(set, size, components));
                }
            }
        }
        return runs;
    }

    private static Run equalParts(int set, int size, int components) {
        double[] point = new double[components];
        for (int i = 0; i < components; i++) {
            point[i] = (set >> (components - 1 - i) & 1) / (double) size;
        }
        return Run.of(point, components, 1);
    }

    /** A run on the whole simplex, taken as pseudocomponents above the lower bounds of a region. */
    public static Run above(MixtureRegion region, Run run) {
        double[] pseudo =
                run.fractions().stream().mapToDouble(Double::doubleValue).toArray();
        return Run.of(region.fractions(pseudo), pseudo.length, run.block());
    }
}
