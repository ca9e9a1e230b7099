package stillroom.desk.reformulation;

import io.javalin.http.Context;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import stillroom.desk.shell.Input;
import stillroom.formulary.reformulation.Bands;
import stillroom.formulary.reformulation.Goal;
import stillroom.formulary.reformulation.Wish;

/** The wish as it stands in the address, so that an answer can be linked to and asked for again. */
record Asked(
        Input input,
        boolean any,
        String without,
        String useUp,
        Aim aim,
        Optional<BigDecimal> batch,
        Wish wish,
        boolean curve) {
    /** What is to be made best. */
    enum Aim {
        CHANGE("The least change", Goal.LEAST_CHANGE),
        COST("The lowest cost", Goal.LOWEST_COST),
        NATURAL("The most of natural origin", Goal.MOST_NATURAL),
        FEW("The fewest ingredients", Goal.FEWEST),
        MIX("A mix: half change, half cost", new Goal(0.5, 0.5, 0, 0));

        private final String words;
        private final Goal goal;

        Aim(String words, Goal goal) {
            this.words = words;
            this.goal = goal;
        }

        String words() {
            return words;
        }
    }

    static Asked of(Context request) {
        Map<String, String> form = new LinkedHashMap<>();
        request.queryParamMap().forEach((name, values) -> form.put(name, String.join("\n", values)));
        Input input = Input.of(form);
        String without = input.text("without");
        String useUp = input.text("use");
        Aim aim = form.containsKey("aim")
                ? input.choice("aim", "The goal", Aim.class).orElse(Aim.CHANGE)
                : Aim.CHANGE;
        Bands usual = Bands.USUAL;
        double activeMatter = band(input, form, "active", "Active matter", usual.activeMatter());
        double water = band(input, form, "water", "Water", usual.water());
        double family = band(input, form, "family", "Each shelf", usual.family());
        Optional<Double> cost =
                form.containsKey("cost") ? input.number("cost", "The cost", "0", "100000") : Optional.empty();
        Optional<Integer> atMost =
                form.containsKey("most") ? input.whole("most", "The number of ingredients", 1, 200) : Optional.empty();
        Optional<BigDecimal> batch =
                form.containsKey("batch") ? input.decimal("batch", "The batch", "1", "10000000") : Optional.empty();
        Bands bands = new Bands(
                activeMatter,
                water,
                Math.max(activeMatter, usual.charge()),
                family,
                usual.hlb(),
                cost.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                OptionalDouble.empty(),
                Map.of());
        Wish wish = new Wish(
                aim.goal,
                bands,
                without.isEmpty() ? Set.of() : Set.of(without),
                useUp.isEmpty() ? Set.of() : Set.of(useUp),
                atMost.map(OptionalInt::of).orElse(OptionalInt.empty()),
                3);
        return new Asked(input, !form.isEmpty(), without, useUp, aim, batch, wish, input.has("curve"));
    }

    private static double band(Input input, Map<String, String> form, String field, String what, double usual) {
        return form.containsKey(field) ? input.number(field, what, "0", "100").orElse(usual) : usual;
    }
}
