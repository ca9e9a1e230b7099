package stillroom.science.mixture;

import java.util.ArrayList;
import java.util.List;

/**
 * The corners of a region: the simplex above the lower bounds, cut by one half-space after another. Two corners are
 * neighbours if no third one lies on all the sides that they share.
 *
 * <p>Source: motzkin-1953 (the double description method), as commonly described.
 */
final class Clipping {
    private static final double ON = 1e-10;

    private Clipping() {}

    /** None if the sides exclude each other. */
    static List<Corner> corners(MixtureRegion region, List<Side> sides) {
        List<Corner> corners = simplex(region);
        for (int k = 0; k < sides.size() && !corners.isEmpty(); k++) {
            corners = cut(corners, sides.get(k), 1L << (region.components() + k), region.components() - 1);
        }
        return corners;
    }

    private static List<Corner> simplex(MixtureRegion region) {
        int q = region.components();
        List<Corner> corners = new ArrayList<>();
        if (region.free() <= ON) {
            corners.add(new Corner(region.fractions(new double[q]), (1L << q) - 1));
            return corners;
        }
        for (int i = 0; i < q; i++) {
            double[] pseudo = new double[q];
            pseudo[i] = 1;
            corners.add(new Corner(region.fractions(pseudo), ((1L << q) - 1) & ~(1L << i)));
        }
        return corners;
    }

    private static List<Corner> cut(List<Corner> corners, Side side, long bit, int dimension) {
        List<Corner> kept = new ArrayList<>();
        List<Corner> inside = new ArrayList<>();
        List<Corner> outside = new ArrayList<>();
        for (Corner corner : corners) {
            double beyond = side.beyond(corner.point());
            if (Math.abs(beyond) <= ON) {
                kept.add(corner.with(bit));
            } else if (beyond < 0) {
                inside.add(corner);
            } else {
                outside.add(corner);
            }
        }
        if (outside.isEmpty()) {
            kept.addAll(inside);
            return kept;
        }
        List<Corner> fresh = new ArrayList<>();
        for (Corner in : inside) {
            for (Corner out : outside) {
                if (neighbours(in, out, corners, dimension)) {
                    fresh.add(crossing(in, out, side, bit));
                }
            }
        }
        kept.addAll(inside);
        kept.addAll(fresh);
        return kept;
    }

    static boolean neighbours(Corner one, Corner other, List<Corner> corners, int dimension) {
        long shared = one.sides() & other.sides();
        if (Long.bitCount(shared) < dimension - 1) {
            return false;
        }
        for (Corner third : corners) {
            if (third != one && third != other && (third.sides() & shared) == shared) {
                return false;
            }
        }
        return true;
    }

    private static Corner crossing(Corner in, Corner out, Side side, long bit) {
        double a = -side.beyond(in.point());
        double b = side.beyond(out.point());
        double[] point = new double[in.point().length];
        for (int i = 0; i < point.length; i++) {
            point[i] = (b * in.point()[i] + a * out.point()[i]) / (a + b);
        }
        return new Corner(point, (in.sides() & out.sides()) | bit);
    }
}
