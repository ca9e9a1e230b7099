package stillroom.science.design;

import java.util.List;

/**
 * One mixture to be made.
 *
 * @param fractions one per component, adding up to 1
 * @param process coded process variables, -1 to 1
 * @param block in which day or lot it falls, from 1
 */
public record Run(List<Double> fractions, List<Double> process, int block) {
    public Run {
        fractions = List.copyOf(fractions);
        process = List.copyOf(process);
    }

    /** Fractions, then process variables. */
    public double[] point() {
        double[] point = new double[fractions.size() + process.size()];
        for (int i = 0; i < point.length; i++) {
            point[i] = i < fractions.size() ? fractions.get(i) : process.get(i - fractions.size());
        }
        return point;
    }

    static Run of(double[] point, int components, int block) {
        List<Double> all = java.util.Arrays.stream(point)
                .map(value -> Math.rint(value * 1e12) / 1e12 + 0.0)
                .boxed()
                .toList();
        return new Run(all.subList(0, components), all.subList(components, all.size()), block);
    }
}
