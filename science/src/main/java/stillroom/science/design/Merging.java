package stillroom.science.design;

import java.util.ArrayList;
import java.util.List;

/** Makes runs that a search has left a hair apart the same run, so that they count as repeats. */
final class Merging {
    private Merging() {}

    static List<double[]> merged(List<double[]> points, double tolerance) {
        List<double[]> merged = new ArrayList<>();
        for (double[] point : points) {
            merged.add(merged.stream()
                    .filter(other -> near(other, point, tolerance))
                    .findFirst()
                    .orElse(point));
        }
        return merged;
    }

    private static boolean near(double[] a, double[] b, double tolerance) {
        for (int i = 0; i < a.length; i++) {
            if (Math.abs(a[i] - b[i]) > tolerance) {
                return false;
            }
        }
        return true;
    }
}
