package stillroom.science.blend;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Which ingredients can always stand in for which: at the same fraction they cost no more, keep every limit that the other
 * keeps, and have bounds at least as wide. Some best blend then uses the other only where it uses the one that can stand in,
 * so that a search need not look at the two in every combination. Of two that are alike the first stands in for the second.
 */
final class Dominance {
    private final Burdens burdens;
    private final int[] from;
    /** For each ingredient, those that can stand in for it; null until it is asked for. */
    private final int[] @Nullable [] better;
    /** For each ingredient, those for which it can stand in; null until it is asked for. */
    private final int[] @Nullable [] worse;

    private Dominance(Burdens burdens, int... from) {
        this.burdens = burdens;
        this.from = from;
        this.better = new int[from.length][];
        this.worse = new int[from.length][];
    }

    static Dominance of(Blend blend) {
        return new Dominance(
                new Burdens(blend), IntStream.range(0, blend.size()).toArray());
    }

    /** The same for some of the ingredients, by their positions in the whole: their bounds may have been narrowed since. */
    Dominance of(List<Integer> some) {
        return new Dominance(burdens, some.stream().mapToInt(Integer::intValue).toArray());
    }

    private int[] better(int k) {
        int[] known = better[k];
        if (known == null) {
            known = positions(j -> burdens.standsIn(from[j], from[k]));
            better[k] = known;
        }
        return known;
    }

    private int[] worse(int j) {
        int[] known = worse[j];
        if (known == null) {
            known = positions(k -> burdens.standsIn(from[j], from[k]));
            worse[j] = known;
        }
        return known;
    }

    private int[] positions(IntPredicate which) {
        int[] found = new int[from.length];
        int count = 0;
        for (int j = 0; j < from.length; j++) {
            if (which.test(j)) {
                found[count++] = j;
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** Decides one ingredient, and with it those that follow from it. */
    Decisions with(Decisions decisions, int j, boolean used) {
        Decisions changed = decisions.with(j, used);
        if (used) {
            decide(better(j), changed, changed::use);
        } else {
            decide(worse(j), changed, changed::leaveOut);
        }
        return changed;
    }

    private static void decide(int[] some, Decisions decisions, IntConsumer how) {
        for (int i : some) {
            if (decisions.undecided(i)) {
                how.accept(i);
            }
        }
    }

    /** Decides what follows from all that has been decided. */
    void spread(Decisions decisions) {
        for (int k = 0; k < from.length; k++) {
            if (decisions.undecided(k)) {
                if (any(better(k), decisions::absent)) {
                    decisions.leaveOut(k);
                } else if (any(worse(k), decisions::used)) {
                    decisions.use(k);
                }
            }
        }
    }

    private static boolean any(int[] some, IntPredicate is) {
        for (int i : some) {
            if (is.test(i)) {
                return true;
            }
        }
        return false;
    }
}
