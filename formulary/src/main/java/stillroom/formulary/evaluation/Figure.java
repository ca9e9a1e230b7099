package stillroom.formulary.evaluation;

import java.util.List;

/**
 * A computed figure with what is needed to judge it.
 *
 * @param name what it is, in the field's words
 * @param low, value, high the range and the nominal; equal where exact
 * @param unit such as "%", "pH", "g"
 * @param method how it was computed, one sentence
 * @param sources keys into the bibliography, or "from memory", "common practice, no source"
 */
public record Figure(
        String name, double low, double value, double high, String unit, String method, List<String> sources) {
    public Figure {
        sources = List.copyOf(sources);
    }

    public static Figure exactly(String name, double value, String unit, String method) {
        return new Figure(name, value, value, value, unit, method, List.of());
    }
}
