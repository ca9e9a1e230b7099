package stillroom.desk.products;

import java.util.HashSet;
import java.util.Set;

/** How alike two names look: shared letter pairs, so that a slip of the finger or another word order matters little. */
final class Likeness {
    /** Below this a suggestion is more noise than help; found by trying, no source. */
    static final double WORTH_SHOWING = 0.4;

    private Likeness() {}

    /** Dice's coefficient over the letter pairs of both names, or how much of the typed one stands in the other; 0 to 1. */
    static double of(String typed, String name) {
        Set<String> one = pairs(typed);
        Set<String> other = pairs(name);
        if (one.isEmpty() || other.isEmpty()) {
            return 0;
        }
        Set<String> both = new HashSet<>(one);
        both.retainAll(other);
        double dice = 2.0 * both.size() / (one.size() + other.size());
        double contained = 0.9 * both.size() / one.size();
        return Math.max(dice, contained > 0.75 ? contained : 0);
    }

    private static Set<String> pairs(String name) {
        Set<String> pairs = new HashSet<>();
        for (String word : Cards.folded(name).split("[^\\p{L}\\p{N}]+")) {
            for (int i = 0; i + 2 <= word.length(); i++) {
                pairs.add(word.substring(i, i + 2));
            }
        }
        return pairs;
    }
}
