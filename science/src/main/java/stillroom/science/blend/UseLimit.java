package stillroom.science.blend;

import java.util.Set;

/**
 * At most so many of a set of ingredients may be used.
 *
 * @param of positions in the blend
 */
public record UseLimit(String name, Set<Integer> of, int atMost) {
    public UseLimit {
        of = Set.copyOf(of);
        if (atMost < 0) {
            throw new IllegalArgumentException(name + " allows " + atMost + " ingredients, must be 0 or more");
        }
    }
}
