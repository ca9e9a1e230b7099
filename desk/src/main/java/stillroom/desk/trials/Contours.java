package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** Lines of equal height over a ternary plane, by straight pieces within small triangles, and the bands between them. */
final class Contours {
    private static final int SIDE = 40;
    /** Colours from lightest to darkest. */
    private static final int COLOURS = 8;

    /** Share of the side below which a height would stand upon a side or another height. */
    private static final double NARROW = 0.12;

    private final TernaryPlane plane;
    private final int count;
    private final double[][] heights = new double[SIDE + 1][SIDE + 1];
    private final List<int[][]> triangles = new ArrayList<>();
    private final List<double[]> labels = new ArrayList<>();
    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;

    /**
     * @param count of the bands, at most as many as there are colours
     * @param height of a mixture; has to be finite within the region
     */
    Contours(TernaryPlane plane, int count, ToDoubleFunction<double[]> height) {
        this.plane = plane;
        this.count = count;
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
        return high > low ? (high - low) / count : 1;
    }

    /** One path per band, cut along the lines between the bands. */
    List<ResultsPage.Cell> cells() {
        Map<Integer, StringBuilder> paths = new TreeMap<>();
        for (int[][] corners : triangles) {
            List<double[]> triangle = new ArrayList<>();
            for (int[] corner : corners) {
                triangle.add(new double[] {share(corner[0]), share(corner[1]), height(corner)});
            }
            for (int band = band(lowest(triangle)); band <= band(-lowest(turned(triangle))); band++) {
                List<double[]> piece = band == 0 ? triangle : above(triangle, low + band * width());
                piece = band == count - 1 ? piece : turned(above(turned(piece), -(low + (band + 1) * width())));
                if (piece.size() > 2) {
                    paths.computeIfAbsent(band, none -> new StringBuilder()).append(path(piece));
                }
            }
        }
        return paths.entrySet().stream()
                .map(path -> new ResultsPage.Cell(path.getValue().toString(), colour(path.getKey())))
                .toList();
    }

    private int band(double height) {
        return (int) Math.max(0, Math.min(count - 1, Math.floor((height - low) / width())));
    }

    private static double lowest(List<double[]> shape) {
        return shape.stream().mapToDouble(one -> one[2]).min().orElse(0);
    }

    /** Upside down, so that what lies below a level is cut as what lies above its opposite. */
    private static List<double[]> turned(List<double[]> shape) {
        return shape.stream().map(one -> new double[] {one[0], one[1], -one[2]}).toList();
    }

    /** The part of a shape that lies on a level or above it. */
    private static List<double[]> above(List<double[]> shape, double level) {
        List<double[]> kept = new ArrayList<>();
        for (int k = 0; k < shape.size(); k++) {
            double[] one = shape.get(k);
            double[] next = shape.get((k + 1) % shape.size());
            if (one[2] >= level) {
                kept.add(one);
            }
            if (one[2] >= level != next[2] >= level) {
                double part = (level - one[2]) / (next[2] - one[2]);
                kept.add(new double[] {one[0] + part * (next[0] - one[0]), one[1] + part * (next[1] - one[1]), level});
            }
        }
        return kept;
    }

    private static String path(List<double[]> shape) {
        return shape.stream().map(one -> TernaryPlane.spot(one[0], one[1])).collect(Collectors.joining("L", "M", "Z"));
    }

    private int colour(int band) {
        return band * (COLOURS - 1) / (count - 1);
    }

    /** Ranges of the bands with their colours, the lowest first. */
    List<ResultsPage.Band> bands() {
        List<ResultsPage.Band> bands = new ArrayList<>();
        for (int band = 0; band < count && !triangles.isEmpty(); band++) {
            bands.add(new ResultsPage.Band(
                    Words.figure(low + band * width()) + " to " + Words.figure(low + (band + 1) * width()),
                    colour(band)));
        }
        return bands;
    }

    /** One line per border between two bands; those that cross nothing are left out. */
    List<ResultsPage.Contour> lines() {
        List<ResultsPage.Contour> lines = new ArrayList<>();
        for (int band = 1; band < count && high > low; band++) {
            line(low + band * width()).ifPresent(lines::add);
        }
        return lines;
    }

    private Optional<ResultsPage.Contour> line(double level) {
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
        Optional<double[]> label = place(middles);
        return Optional.of(new ResultsPage.Contour(
                path.toString(),
                label.isPresent() ? Words.figure(level) : "",
                label.map(at -> TernaryPlane.figure(TernaryPlane.x(at[0], at[1])))
                        .orElse("0"),
                label.map(at -> TernaryPlane.figure(TernaryPlane.y(at[0]))).orElse("0")));
    }

    /** Where a height is read best: away from the sides and from those that stand already; none where it is too narrow. */
    private Optional<double[]> place(List<double[]> middles) {
        double[] best = middles.get(0);
        double most = -1;
        for (double[] one : middles) {
            double room = 2 * Math.min(Math.min(one[0], one[1]), 1 - one[0] - one[1]);
            for (double[] other : labels) {
                room = Math.min(room, Math.hypot(one[0] - other[0], one[1] - other[1]));
            }
            if (room > most) {
                most = room;
                best = one;
            }
        }
        if (most < NARROW) {
            return Optional.empty();
        }
        labels.add(best);
        return Optional.of(best);
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
