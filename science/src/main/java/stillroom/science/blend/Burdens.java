package stillroom.science.blend;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What each ingredient lays on a blend, as a row of numbers that are the better the smaller: costs, least dose, the most (turned
 * round), its value in each limit (turned round where the limit has a least), and its place in each use limit.
 */
final class Burdens {
    private final Blend blend;
    private final double[] @Nullable [] rows;

    Burdens(Blend blend) {
        this.blend = blend;
        this.rows = new double[blend.size()][];
    }

    /**
     * Whether an ingredient can take the place of another in any blend that lacks it, and cost no more. Of two that are alike only
     * the first does.
     */
    boolean standsIn(int j, int k) {
        if (j == k
                || !isComparable(j)
                || !isComparable(k)
                || blend.ingredients().get(k).required()) {
            return false;
        }
        double[] one = row(j);
        double[] other = row(k);
        boolean alike = true;
        for (int i = 0; i < one.length; i++) {
            if (one[i] > other[i]) {
                return false;
            }
            alike &= one[i] == other[i];
        }
        return !alike || j < k || blend.ingredients().get(j).required();
    }

    /** A price of change hangs on where an ingredient is now: none stands in for another. */
    private boolean isComparable(int j) {
        return !blend.isBeside(j) && blend.ingredients().get(j).cost().perChange() == 0;
    }

    private double[] row(int j) {
        double[] known = rows[j];
        if (known == null) {
            known = reckoned(j);
            rows[j] = known;
        }
        return known;
    }

    private double[] reckoned(int j) {
        Ingredient ingredient = blend.ingredients().get(j);
        List<Limit> limits = blend.limits();
        double[] row = new double[4 + 2 * limits.size() + blend.useLimits().size()];
        row[0] = ingredient.cost().perFraction();
        row[1] = ingredient.cost().whenUsed();
        row[2] = ingredient.leastIfUsed();
        row[3] = -ingredient.most();
        int at = 4;
        for (Limit limit : limits) {
            double value = limit.values().get(j);
            row[at++] = Double.isInfinite(limit.max()) ? 0 : value;
            row[at++] = Double.isInfinite(limit.min()) ? 0 : -value;
        }
        for (UseLimit limit : blend.useLimits()) {
            row[at++] = limit.of().contains(j) ? 1 : 0;
        }
        return row;
    }
}
