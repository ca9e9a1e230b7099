package stillroom.science.design;

import java.util.ArrayList;
import java.util.List;

/**
 * Points and weights that average polynomials over a simplex exactly, up to an odd degree. Some weights are negative.
 *
 * <p>Source: grundmann-1978.
 */
final class Cubature {
    /**
     * @param place barycentric coordinates, one per corner
     * @param weight share of the mean; all weights add up to 1
     */
    record Node(double[] place, double weight) {}

    private Cubature() {}

    /** Nodes in a simplex of so many dimensions, exact for polynomials up to the degree. */
    static List<Node> nodes(int dimension, int degree) {
        int s = degree / 2;
        int odd = 2 * s + 1;
        List<Node> nodes = new ArrayList<>();
        for (int i = 0; i <= s; i++) {
            double base = odd + dimension - 2 * i;
            double weight = (i % 2 == 0 ? 1 : -1) * Math.pow(2, -2.0 * s) * Math.pow(base, odd);
            for (int k = 1; k <= i; k++) {
                weight /= k;
            }
            for (int k = 1; k <= odd + dimension - i; k++) {
                weight /= k;
            }
            for (int k = 1; k <= dimension; k++) {
                weight *= k;
            }
            spread(new int[dimension + 1], 0, s - i, base, weight, nodes);
        }
        return nodes;
    }

    /** All ways to share a number out among the corners. */
    private static void spread(int[] parts, int at, int left, double base, double weight, List<Node> nodes) {
        if (at == parts.length - 1) {
            parts[at] = left;
            double[] place = new double[parts.length];
            for (int k = 0; k < place.length; k++) {
                place[k] = (2 * parts[k] + 1) / base;
            }
            nodes.add(new Node(place, weight));
            return;
        }
        for (int part = 0; part <= left; part++) {
            parts[at] = part;
            spread(parts, at + 1, left - part, base, weight, nodes);
        }
    }
}
