package stillroom.desk.reformulation;

import io.javalin.http.Context;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import stillroom.desk.shell.Input;
import stillroom.formulary.reformulation.Bands;
import stillroom.formulary.reformulation.Measure;
import stillroom.formulary.reformulation.Wish;

/**
 * The wish as it stands in the address, so that an answer can be linked to and asked for again.
 *
 * @param form fields as they stand in the address
 * @param without material keys of which there are no more
 * @param useUp a material key, {@link #EXPIRING}, or empty
 * @param bought material keys that count as on the shelf, in plenty
 * @param own widths of single figures by their fields
 * @param allowed by material key
 * @param curve of which two measures, where one is to be drawn
 */
record Asked(
        Input input,
        Map<String, String> form,
        boolean any,
        List<String> without,
        String useUp,
        List<String> bought,
        Aim aim,
        Optional<BigDecimal> batch,
        Bands bands,
        OptionalInt atMost,
        Map<String, Double> own,
        Map<String, Wish.Allowed> allowed,
        Optional<CurveOf> curve) {
    /** Use up whatever expires soon. */
    static final String EXPIRING = "soon";

    static final String WITHOUT = "without";
    /** Further materials that must go, each by its key. */
    static final String ALSO = "also";

    /** As if it were bought already. */
    static final String BUY = "buy";

    static final String CONSTITUENT = "of-";
    static final String NO_HARSHER = "no-harsher";
    private static final int SOON_DAYS = 90;
    private static final int ANSWERS = 3;

    /** The first is drawn upwards, the second to the right. */
    record CurveOf(Measure first, Measure second) {
        String words() {
            return first.words() + " against " + second.words().toLowerCase(java.util.Locale.ROOT);
        }
    }

    static Asked of(Context request) {
        Map<String, String> form = new LinkedHashMap<>();
        request.queryParamMap().forEach((name, values) -> form.put(name, String.join("\n", values)));
        Input input = Input.of(form);
        Aim aim = input.has("aim") ? input.choice("aim", "The goal", Aim.class).orElse(Aim.CHANGE) : Aim.CHANGE;
        Optional<Integer> atMost =
                input.has("most") ? input.whole("most", "The number of ingredients", 1, 200) : Optional.empty();
        Optional<BigDecimal> batch =
                input.has("batch") ? input.decimal("batch", "The batch", "1", "10000000") : Optional.empty();
        aim.goal(input);
        return new Asked(
                input,
                form,
                !form.isEmpty(),
                without(form),
                input.text("use"),
                form.getOrDefault(BUY, "")
                        .lines()
                        .map(String::strip)
                        .filter(key -> !key.isEmpty())
                        .distinct()
                        .toList(),
                aim,
                batch,
                bands(input, form),
                atMost.map(OptionalInt::of).orElse(OptionalInt.empty()),
                OwnBands.widths(input, form.keySet()),
                OwnBands.allowed(input, form.keySet()),
                input.has("curve") ? Optional.of(curve(input)) : Optional.empty());
    }

    /** The one chosen first, then those that were ticked besides. */
    private static List<String> without(Map<String, String> form) {
        return Stream.concat(
                        form.getOrDefault(WITHOUT, "").lines(),
                        form.getOrDefault(ALSO, "").lines())
                .map(String::strip)
                .filter(key -> !key.isEmpty())
                .distinct()
                .toList();
    }

    /** Natural origin is asked for, so that what is not known of it must be said. */
    boolean isAboutNature(Wish wish) {
        return wish.goal().natural() > 0
                || wish.bands().natural().isPresent()
                || curve.map(of -> of.first() == Measure.NATURAL || of.second() == Measure.NATURAL)
                        .orElse(false);
    }

    private static Bands bands(Input input, Map<String, String> form) {
        Bands usual = Bands.USUAL;
        double active = band(input, "active", "Active matter", usual.activeMatter());
        return new Bands(
                        active,
                        band(input, "water", "Water", usual.water()),
                        band(input, "charge", "The charge", Math.max(active, usual.charge())),
                        band(input, "family", "Each shelf", usual.family()),
                        band(input, "hlb", "HLB", usual.hlb()),
                        bound(input, "cost", "The cost", "100000"),
                        bound(input, "natural", "Natural origin", "100"),
                        constituents(input, form))
                .noHarsher(input.has(NO_HARSHER));
    }

    /** Empty: left free. */
    private static Map<String, Double> constituents(Input input, Map<String, String> form) {
        Map<String, Double> constituents = new LinkedHashMap<>();
        form.keySet().stream()
                .filter(field -> field.startsWith(CONSTITUENT))
                .forEach(field -> input.number(field, "The band", "0", "1000")
                        .ifPresent(width -> constituents.put(field.substring(CONSTITUENT.length()), width)));
        return constituents;
    }

    private static double band(Input input, String field, String what, double usual) {
        return input.has(field) ? input.number(field, what, "0", "1000").orElse(usual) : usual;
    }

    private static OptionalDouble bound(Input input, String field, String what, String highest) {
        Optional<Double> typed = input.has(field) ? input.number(field, what, "0", highest) : Optional.empty();
        return typed.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static CurveOf curve(Input input) {
        Measure first = measure(input, "first", Measure.COST);
        Measure second = measure(input, "second", first == Measure.CHANGE ? Measure.COST : Measure.CHANGE);
        if (first == second) {
            input.refuse("second", "A curve needs two different goals.");
        }
        return new CurveOf(first, second);
    }

    private static Measure measure(Input input, String field, Measure usual) {
        return input.has(field) ? input.choice(field, "The goal", Measure.class).orElse(usual) : usual;
    }

    Wish wish(Subjected subjected) {
        return new Wish(
                aim.goal(input),
                OwnBands.with(bands, own, figures(subjected)),
                Set.copyOf(without),
                useUp.isEmpty()
                        ? Set.of()
                        : useUp.equals(EXPIRING) ? subjected.expiringBy(soon(subjected)) : Set.of(useUp),
                allowed,
                atMost,
                ANSWERS);
    }

    /** Names of the figures that a wish may give a width of their own. */
    List<String> figures(Subjected subjected) {
        return OwnBands.figures(without.stream().map(subjected::name).toList());
    }

    static LocalDate soon(Subjected subjected) {
        return subjected.desk().today().plusDays(SOON_DAYS);
    }
}
