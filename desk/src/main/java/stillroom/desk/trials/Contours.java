package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/** Lines of equal height over a ternary plane, by straight pieces within small triangles, and the bands between them. */
final class Contours {
    private static final int SIDE = 40;
    private static final int BANDS = 8;

    private final TernaryPlane plane;
    private final double[][] heights = new double[SIDE + 1][SIDE + 1];
    private final List<int[][]> triangles = new ArrayList<>();
    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;

    /** @param height of a mixture; has to be finite within the region */
    Contours(TernaryPlane plane, ToDoubleFunction<double[]> height) {
        this.plane = plane;
        for (int i = 0; i <= SIDE; i++) {
            for (int k = 0; k <= SIDE - i; k++) {
                heights[i][k] = height.applyAsDouble(plane.point(share(i), share(k)));
            }
        }
        for (int i = 0; i < SIDE; i++) {
            for (int k = 0; k < SIDE - i; k++) {
                take(new int[][] {{i, k}, {i + 1, k}, {i, k + 1}});
                if (i + k < SIDE - 1) {
                    take(new int[][] {{i + 1, k}, {i + 1, k + 1}, {i, k + 1}});
                }
            }
        }
    }

    private static double share(double index) {
        return index / SIDE;
    }

    /** Only triangles whose middle is allowed are drawn. */
    private void take(int[][] corners) {
        double a = share((corners[0][0] + corners[1][0] + corners[2][0]) / 3.0);
        double b = share((corners[0][1] + corners[1][1] + corners[2][1]) / 3.0);
        if (plane.allows(plane.point(a, b))) {
            triangles.add(corners);
            low = Math.min(low, middle(corners));
            high = Math.max(high, middle(corners));
        }
    }

    private double height(int[] corner) {
        return heights[corner[0]][corner[1]];
    }

    private double middle(int[][] corners) {
        return (height(corners[0]) + height(corners[1]) + height(corners[2])) / 3;
    }

    private double width() {
        return high > low ? (high - low) / BANDS : 1;
    }

    /** One path per band. */
    List<ResultsPage.Cell> cells() {
        Map<Integer, StringBuilder> paths = new TreeMap<>();
        for (int[][] corners : triangles) {
            int band = (int) Math.max(0, Math.min(BANDS - 1, (middle(corners) - low) / width()));
            paths.computeIfAbsent(band, none -> new StringBuilder())
                    .append("M" + spot(corners[0]) + "L" + spot(corners[1]) + "L" + spot(corners[2]) + "Z");
        }
        return paths.entrySet().stream()
                .map(path -> new ResultsPage.Cell(path.getValue().toString(), path.getKey()))
                .toList();
    }

    private static String spot(int[] corner) {
        return TernaryPlane.spot(share(corner[0]), share(corner[1]));
    }

    /** Ranges of the bands, the lowest first. */
    List<String> bands() {
        List<String> bands = new ArrayList<>();
        for (int band = 0; band < BANDS && !triangles.isEmpty(); band++) {
            bands.add(Words.figure(low + band * width()) + " to " + Words.figure(low + (band + 1) * width()));
        }
        return bands;
    }

    /** One line per border between two bands; those that cross nothing are left out. */
    List<ResultsPage.Contour> lines() {
        List<ResultsPage.Contour> lines = new ArrayList<>();
        for (int band = 1; band < BANDS && high > low; band++) {
            line(band, low + band * width()).ifPresent(lines::add);
        }
        return lines;
    }

    private Optional<ResultsPage.Contour> line(int band, double level) {
        StringBuilder path = new StringBuilder();
        List<double[]> middles = new ArrayList<>();
        for (int[][] corners : triangles) {
            List<double[]> ends = crossings(corners, level);
            if (ends.size() == 2) {
                double[] from = ends.get(0);
                double[] to = ends.get(1);
                path.append('M').append(TernaryPlane.spot(from[0], from[1]));
                path.append('L').append(TernaryPlane.spot(to[0], to[1]));
                middles.add(new double[] {(from[0] + to[0]) / 2, (from[1] + to[1]) / 2});
            }
        }
        if (middles.isEmpty()) {
            return Optional.empty();
        }
        // Places differ from line to line, so that heights do not stand upon each other.
        double[] label = middles.get((int) (0.382 * band % 1 * middles.size()));
        return Optional.of(new ResultsPage.Contour(
                path.toString(),
                Words.figure(level),
                TernaryPlane.figure(TernaryPlane.x(label[0], label[1])),
                TernaryPlane.figure(TernaryPlane.y(label[0]))));
    }

    private List<double[]> crossings(int[][] corners, double level) {
        List<double[]> ends = new ArrayList<>();
        for (int side = 0; side < 3; side++) {
            int[] one = corners[side];
            int[] other = corners[(side + 1) % 3];
            if (height(one) < level != height(other) < level) {
                double part = (level - height(one)) / (height(other) - height(one));
                ends.add(new double[] {
                    share(one[0] + part * (other[0] - one[0])), share(one[1] + part * (other[1] - one[1]))
                });
            }
        }
        return ends;
    }
}
