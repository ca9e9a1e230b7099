package stillroom.science.mixture;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The allowed mixtures as a convex body. Immutable; arrays given out are copies. */
public final class Polytope {
    private static final double ON = 1e-9;

    private final List<Corner> corners;
    private final MixtureRegion region;
    private final Side[] sides;
    private final int components;

    Polytope(MixtureRegion region, List<Side> sides, List<Corner> corners) {
        this.region = region;
        this.sides = sides.toArray(Side[]::new);
        this.corners = List.copyOf(corners);
        this.components = region.components();
    }

    public MixtureRegion region() {
        return region;
    }

    /** The sides on which a mixture lies, as bits in the order of {@link #sides(int)}. */
    public long sidesAt(double[] fractions) {
        long on = 0;
        for (int i = 0; i < components; i++) {
            on |= fractions[i] - region.lower().get(i) <= ON ? 1L << i : 0;
        }
        for (int k = 0; k < sides.length; k++) {
            on |= sides[k].beyond(fractions) >= -ON ? 1L << (components + k) : 0;
        }
        return on;
    }

    /** How far one may go from a mixture along a direction (whose entries add up to 0) before leaving the region [-]. */
    public double reach(double[] fractions, double[] direction) {
        double reach = Double.POSITIVE_INFINITY;
        for (int i = 0; i < components; i++) {
            if (direction[i] < 0) {
                reach = Math.min(
                        reach, Math.max(0, fractions[i] - region.lower().get(i)) / -direction[i]);
            }
        }
        for (Side side : sides) {
            double slope = side.slope(direction);
            if (slope > 0) {
                reach = Math.min(reach, Math.max(0, -side.beyond(fractions)) / slope);
            }
        }
        return reach;
    }

    public int components() {
        return components;
    }

    /** The extreme vertices [mass fraction], one array per corner. */
    public List<double[]> vertices() {
        return corners.stream().map(corner -> corner.point().clone()).toList();
    }

    /** The sides a corner lies on, as bits; corners of one face share the bits of that face. */
    public long sides(int corner) {
        return corners.get(corner).sides();
    }

    /** The body cut into simplices, each given by its corners [mass fraction]; none where more than so many are needed. */
    public Optional<List<double[][]>> simplices(int most) {
        return new Triangulation(corners, components + sides.length, most)
                .simplices()
                .map(found -> found.stream()
                        .map(simplex -> simplex.stream()
                                .map(i -> corners.get(i).point().clone())
                                .toArray(double[][]::new))
                        .toList());
    }

    /** The mean of the corners [mass fraction]. */
    public double[] centroid() {
        return mean(corners);
    }

    /** Centroids of the edges [mass fraction]. */
    public List<double[]> edgeMidpoints() {
        List<double[]> midpoints = new ArrayList<>();
        List<List<Integer>> joined = neighbours();
        for (int i = 0; i < corners.size(); i++) {
            for (int k : joined.get(i)) {
                if (k > i) {
                    midpoints.add(mean(List.of(corners.get(i), corners.get(k))));
                }
            }
        }
        return midpoints;
    }

    private List<List<Integer>> neighbours() {
        int dimension = dimension();
        List<List<Integer>> joined = new ArrayList<>();
        corners.forEach(corner -> joined.add(new ArrayList<>()));
        for (int i = 0; i < corners.size(); i++) {
            for (int k = i + 1; k < corners.size(); k++) {
                if (Clipping.neighbours(corners.get(i), corners.get(k), corners, dimension)) {
                    joined.get(i).add(k);
                    joined.get(k).add(i);
                }
            }
        }
        return joined;
    }

    /** Centroids of the two-dimensional faces, each spanned by two edges that meet [mass fraction]. */
    public List<double[]> planeCentroids() {
        Set<Long> seen = new HashSet<>();
        List<double[]> centroids = new ArrayList<>();
        List<List<Integer>> joined = neighbours();
        for (int i = 0; i < corners.size(); i++) {
            List<Integer> others = joined.get(i);
            for (int a = 0; a < others.size(); a++) {
                for (int b = a + 1; b < others.size(); b++) {
                    long shared = corners.get(i).sides()
                            & corners.get(others.get(a)).sides()
                            & corners.get(others.get(b)).sides();
                    if (!seen.contains(shared)) {
                        seen.add(shared);
                        List<Corner> face = face(shared);
                        if (dimension(face) == 2) {
                            centroids.add(mean(face));
                        }
                    }
                }
            }
        }
        return centroids;
    }

    /** Centroids of the faces that bounds and constraints make [mass fraction]. */
    public List<double[]> facetCentroids() {
        List<double[]> centroids = new ArrayList<>();
        for (int side = 0; side < components + sides.length; side++) {
            List<Corner> face = face(1L << side);
            if (face.size() >= dimension() && face.size() < corners.size()) {
                centroids.add(mean(face));
            }
        }
        return centroids;
    }

    private List<Corner> face(long sides) {
        return corners.stream()
                .filter(corner -> (corner.sides() & sides) == sides)
                .toList();
    }

    /** The dimension of the body: one less than the components where nothing is fixed. */
    public int dimension() {
        return dimension(corners);
    }

    private int dimension(List<Corner> face) {
        double[][] rows = new double[face.size()][];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = difference(face.get(i).point(), face.get(0).point());
        }
        return rank(rows, components);
    }

    private static double[] difference(double[] a, double[] b) {
        double[] d = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            d[i] = a[i] - b[i];
        }
        return d;
    }

    private static int rank(double[][] rows, int columns) {
        int rank = 0;
        for (int column = 0; column < columns && rank < rows.length; column++) {
            int pivot = rank;
            for (int i = rank + 1; i < rows.length; i++) {
                pivot = Math.abs(rows[i][column]) > Math.abs(rows[pivot][column]) ? i : pivot;
            }
            if (Math.abs(rows[pivot][column]) <= ON) {
                continue;
            }
            double[] swap = rows[pivot];
            rows[pivot] = rows[rank];
            rows[rank] = swap;
            for (int i = rank + 1; i < rows.length; i++) {
                double factor = rows[i][column] / rows[rank][column];
                for (int k = column; k < columns; k++) {
                    rows[i][k] -= factor * rows[rank][k];
                }
            }
            rank++;
        }
        return rank;
    }

    private static double[] mean(List<Corner> some) {
        double[] sum = new double[some.get(0).point().length];
        for (Corner corner : some) {
            for (int i = 0; i < sum.length; i++) {
                sum[i] += corner.point()[i] / some.size();
            }
        }
        return sum;
    }
}
