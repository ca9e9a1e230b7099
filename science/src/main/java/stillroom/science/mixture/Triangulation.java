package stillroom.science.mixture;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Cuts a body into simplices: each face is its first corner joined to all of its own faces that lack that corner. Faces are
 * known by the corners on them; the largest sets of corners that share one more side are the faces of the next dimension.
 *
 * <p>Source: lee-1991 (pulling triangulations; from memory).
 */
final class Triangulation {
    private final List<Corner> corners;
    private final int sides;
    private final int most;
    private final Map<List<Integer>, List<List<Integer>>> known = new HashMap<>();

    /** @param most simplices after which it is given up */
    Triangulation(List<Corner> corners, int sides, int most) {
        this.corners = corners;
        this.sides = sides;
        this.most = most;
    }

    /** Corner numbers of each simplex; none where there are too many. */
    Optional<List<List<Integer>>> simplices() {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            all.add(i);
        }
        List<List<Integer>> simplices = of(all);
        return simplices.size() > most ? Optional.empty() : Optional.of(simplices);
    }

    private List<List<Integer>> of(List<Integer> face) {
        List<List<Integer>> earlier = known.get(face);
        if (earlier != null) {
            return earlier;
        }
        List<List<Integer>> simplices = new ArrayList<>();
        if (face.size() == 1) {
            simplices.add(face);
        } else {
            int apex = face.get(0);
            for (List<Integer> facet : facets(face)) {
                if (!facet.contains(apex) && simplices.size() <= most) {
                    of(facet).forEach(simplex -> simplices.add(joined(apex, simplex)));
                }
            }
        }
        known.put(face, simplices);
        return simplices;
    }

    private static List<Integer> joined(int apex, List<Integer> simplex) {
        List<Integer> joined = new ArrayList<>(simplex.size() + 1);
        joined.add(apex);
        joined.addAll(simplex);
        return joined;
    }

    private List<List<Integer>> facets(List<Integer> face) {
        List<List<Integer>> subsets = new ArrayList<>();
        for (int side = 0; side < sides; side++) {
            long bit = 1L << side;
            List<Integer> on = face.stream()
                    .filter(i -> (corners.get(i).sides() & bit) != 0)
                    .toList();
            if (!on.isEmpty() && on.size() < face.size() && !subsets.contains(on)) {
                subsets.add(on);
            }
        }
        return subsets.stream()
                .filter(one -> subsets.stream().noneMatch(other -> other.size() > one.size() && other.containsAll(one)))
                .toList();
    }
}
