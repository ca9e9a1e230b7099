package stillroom.desk.products;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** How alike two names look, word by word, so that a slip of the finger or another word order matters little. */
final class Likeness {
    /** Below this a suggestion is more noise than help; found by trying, no source. */
    static final double WORTH_SHOWING = 0.5;

    private Likeness() {}

    /** How well the typed words are found again, on average; a little more where nothing else stands there. From 0. */
    static double of(String typed, String name) {
        List<String> asked = words(typed);
        List<String> offered = words(name);
        double found = asked.stream()
                .mapToDouble(word -> offered.stream()
                        .mapToDouble(other -> dice(word, other))
                        .max()
                        .orElse(0))
                .average()
                .orElse(0);
        return found + 0.1 * dice(String.join("", asked), String.join("", offered));
    }

    private static List<String> words(String name) {
        return Arrays.stream(Cards.folded(name).split("[^\\p{L}\\p{N}]+"))
                .filter(word -> word.length() > 1)
                .toList();
    }

    /** Dice's coefficient over the letter pairs of two words, 0 to 1. */
    private static double dice(String one, String other) {
        Set<String> pairs = pairs(one);
        Set<String> others = pairs(other);
        int all = pairs.size() + others.size();
        pairs.retainAll(others);
        return all == 0 ? 0 : 2.0 * pairs.size() / all;
    }

    private static Set<String> pairs(String word) {
        Set<String> pairs = new HashSet<>();
        for (int i = 0; i + 2 <= word.length(); i++) {
            pairs.add(word.substring(i, i + 2));
        }
        return pairs;
    }
}
