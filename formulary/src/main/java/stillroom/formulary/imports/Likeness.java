package stillroom.formulary.imports;

import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * How alike two names are, 0 to 1: word by word in any order, each word by the measure of Jaro and Winkler. The words of
 * both must be found in the other; "sodium lauryl sulfate" is not half of "sodium laureth sulfate".
 */
final class Likeness {
    private static final int LONGEST_PREFIX = 4;
    private static final double PREFIX_WEIGHT = 0.1;
    private static final Set<String> FILLERS = Set.of(
            "and",
            "und",
            "et",
            "y",
            "of",
            "the",
            "de",
            "in",
            "organic",
            "bio",
            "natural",
            "pure",
            "refined",
            "unrefined",
            "cosmetic",
            "grade",
            "solution",
            "powder",
            "active");

    private Likeness() {}

    static double of(String one, String other) {
        return of(words(one), words(other));
    }

    /** Of the words that {@link #words} finds. */
    static double of(List<String> first, List<String> second) {
        if (first.isEmpty() || second.isEmpty()) {
            return 0;
        }
        return (found(first, second) + found(second, first)) / 2;
    }

    static List<String> words(String name) {
        return Arrays.stream(
                        Folding.of(name).replaceAll("\\d+([.,]\\d+)?\\s*%", " ").split("[^\\p{L}\\p{N}]+"))
                .filter(word -> !word.isEmpty() && !FILLERS.contains(word))
                .toList();
    }

    /** Longer words weigh more: they tell more. Numbers must be the same: PEG-40 is not PEG-400. */
    private static double found(List<String> words, List<String> among) {
        double sum = 0;
        double weight = 0;
        for (String word : words) {
            double best = among.stream()
                    .mapToDouble(other -> alike(word, other))
                    .max()
                    .orElse(0);
            sum += best * word.length();
            weight += word.length();
        }
        return sum / weight;
    }

    private static double alike(String word, String other) {
        if (word.equals(other)) {
            return 1;
        }
        boolean number = hasDigit(word) || hasDigit(other) || Math.abs(word.length() - other.length()) > 4;
        double alike = number ? 0 : jaroWinkler(word, other);
        return alike < 0.8 ? 0 : alike;
    }

    private static boolean hasDigit(String word) {
        return word.chars().anyMatch(Character::isDigit);
    }

    /** Jaro's share of common letters in like order, raised by Winkler for a common beginning. */
    static double jaroWinkler(String one, String other) {
        double jaro = jaro(one, other);
        int prefix = 0;
        while (prefix < LONGEST_PREFIX
                && prefix < Math.min(one.length(), other.length())
                && one.charAt(prefix) == other.charAt(prefix)) {
            prefix++;
        }
        return jaro + prefix * PREFIX_WEIGHT * (1 - jaro);
    }

    private static double jaro(String one, String other) {
        int window = Math.max(0, Math.max(one.length(), other.length()) / 2 - 1);
        boolean[] inOne = new boolean[one.length()];
        boolean[] inOther = new boolean[other.length()];
        int common = 0;
        for (int i = 0; i < one.length(); i++) {
            for (int j = Math.max(0, i - window); j <= Math.min(other.length() - 1, i + window) && !inOne[i]; j++) {
                if (!inOther[j] && one.charAt(i) == other.charAt(j)) {
                    inOne[i] = true;
                    inOther[j] = true;
                    common++;
                }
            }
        }
        if (common == 0) {
            return 0;
        }
        double swapped = swapped(one, other, inOne, inOther) / 2.0;
        return ((double) common / one.length() + (double) common / other.length() + (common - swapped) / common) / 3;
    }

    private static int swapped(String one, String other, boolean[] inOne, boolean[] inOther) {
        int swapped = 0;
        int j = 0;
        for (int i = 0; i < one.length(); i++) {
            if (!inOne[i]) {
                continue;
            }
            while (!inOther[j]) {
                j++;
            }
            swapped += one.charAt(i) == other.charAt(j) ? 0 : 1;
            j++;
        }
        return swapped;
    }
}
