package stillroom.desk.reformulation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Input;
import stillroom.formulary.reformulation.Bands;
import stillroom.formulary.reformulation.FigureNames;
import stillroom.formulary.reformulation.Wish;

/**
 * Fields that only some wishes have: a width of its own for one figure ({@code own-anionic-active-matter}), and between what a
 * material may be dosed whatever its card and the shelf say ({@code least-KEY}, {@code most-KEY}).
 */
final class OwnBands {
    static final String OWN = "own-";
    static final String LEAST = "least-";
    static final String MOST = "most-";
    private static final double PERCENT = 100;

    private OwnBands() {}

    static String field(String figure) {
        return OWN + figure.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }

    /** By field name. */
    static Map<String, Double> widths(Input input, Iterable<String> fields) {
        Map<String, Double> widths = new LinkedHashMap<>();
        fields.forEach(field -> {
            if (field.startsWith(OWN)) {
                input.number(field, "The band", "0", "100000").ifPresent(width -> widths.put(field, width));
            }
        });
        return widths;
    }

    static Bands with(Bands bands, Map<String, Double> widths, List<String> figures) {
        Bands own = bands;
        for (String figure : figures) {
            Double width = widths.get(field(figure));
            own = width == null ? own : own.withOwn(figure, width);
        }
        return own;
    }

    static Map<String, Wish.Allowed> allowed(Input input, Iterable<String> fields) {
        Map<String, Wish.Allowed> allowed = new LinkedHashMap<>();
        fields.forEach(field -> {
            if (field.startsWith(MOST) && !field.equals(MOST)) {
                String key = field.substring(MOST.length());
                double most = percent(input, field).orElse(PERCENT);
                double least = percent(input, LEAST + key).orElse(0.0);
                if (least > most) {
                    input.refuse(LEAST + key, "The least must not be above the most.");
                }
                allowed.put(key, new Wish.Allowed(Math.min(least, most) / PERCENT, most / PERCENT));
            }
        });
        return allowed;
    }

    private static Optional<Double> percent(Input input, String field) {
        return input.has(field) ? input.number(field, "The dose", "0", "100") : Optional.empty();
    }

    /** Fields of the page: the figures of this version, and whatever the wish names besides. */
    static List<Choice> shown(List<String> present, List<String> figures, Map<String, Double> widths) {
        List<Choice> shown = new ArrayList<>();
        figures.forEach(figure -> {
            if (present.contains(figure) || widths.containsKey(field(figure))) {
                shown.add(new Choice(field(figure), figure));
            }
        });
        return shown;
    }

    /** @param go names of the materials that go */
    static List<String> figures(List<String> go) {
        List<String> figures = new ArrayList<>(FigureNames.all());
        go.stream().map(FigureNames::dose).forEach(figures::add);
        return figures;
    }
}
