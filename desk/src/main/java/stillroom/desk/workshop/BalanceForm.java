package stillroom.desk.workshop;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import stillroom.desk.shell.Decimals;
import stillroom.desk.shell.Input;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.LiveScale;
import stillroom.formulary.quantity.Grams;
import stillroom.science.weighing.Repeatability;
import stillroom.science.weighing.ScaleLine;

/** A balance as form fields, and back. */
final class BalanceForm {
    private static final int FEWEST_READINGS = 5;
    private static final MathContext THREE_DIGITS = new MathContext(3, RoundingMode.HALF_EVEN);

    private static final Pattern BETWEEN_READINGS = Pattern.compile("[\\s;]+");

    private BalanceForm() {}

    static Map<String, String> fields(Balance balance) {
        Map<String, String> fields = new HashMap<>();
        fields.put("name", balance.name());
        fields.put("step", balance.step().toString());
        fields.put("maximum", balance.maximum().toString());
        balance.repeatability().ifPresent(s -> fields.put("repeatability", s.toString()));
        balance.live().ifPresent(live -> {
            fields.put("live", "yes");
            fields.put("pattern", live.pattern());
            fields.put("moving", live.moving());
            fields.put("baud", Integer.toString(live.baud()));
            fields.put("device", live.device());
        });
        return fields;
    }

    /**
     * The balance as typed; empty where something is refused.
     *
     * @param others the balances that it must not be confused with
     */
    static Optional<Balance> read(Input input, List<Balance> others) {
        String name = input.required("name", "The name");
        if (others.stream().anyMatch(other -> other.name().equalsIgnoreCase(name))) {
            input.refuse("name", "Another balance bears this name.");
        }
        Optional<Grams> step = positive(input, "step", "The step");
        Optional<Grams> maximum = positive(input, "maximum", "The largest load");
        if (step.isPresent() && maximum.isPresent() && maximum.get().compareTo(step.get()) <= 0) {
            input.refuse("maximum", "The largest load must be above the step.");
        }
        Optional<Grams> typed = input.grams("repeatability", "Repeatability");
        Optional<Grams> estimated = estimated(input);
        Optional<LiveScale> live = live(input);
        if (!input.isSound() || step.isEmpty() || maximum.isEmpty()) {
            return Optional.empty();
        }
        Optional<Grams> repeatability = estimated.or(() -> typed).filter(s -> s.signum() > 0);
        return Optional.of(new Balance(name, step.get(), repeatability, maximum.get()).with(Optional.empty(), live));
    }

    private static Optional<LiveScale> live(Input input) {
        if (!input.has("live")) {
            return Optional.empty();
        }
        String pattern = input.text("pattern").isEmpty() ? ScaleLine.USUAL : input.text("pattern");
        if (ScaleLine.of(pattern, "").isEmpty()) {
            return input.refuse(
                    "pattern", "This pattern cannot be read: it needs a group (?<value>...) for the figure.");
        }
        int baud = input.whole("baud", "The speed", 50, 4_000_000).orElse(9600);
        return Optional.of(new LiveScale(pattern, input.text("moving"), baud, input.text("device")));
    }

    private static Optional<Grams> positive(Input input, String field, String what) {
        Optional<Grams> typed = input.grams(field, what);
        if (typed.map(Grams::isZero).orElse(!input.hasProblem(field))) {
            return input.refuse(field, what + " is missing; it must be above 0 g.");
        }
        return typed;
    }

    /** The standard deviation of the readings typed in, to three digits [g]. */
    private static Optional<Grams> estimated(Input input) {
        List<Double> readings = new ArrayList<>();
        for (String word : BETWEEN_READINGS.split(input.text("readings"), -1)) {
            Optional<BigDecimal> reading = Decimals.read(word);
            if (reading.isPresent()) {
                readings.add(reading.get().doubleValue());
            } else if (!word.isEmpty()) {
                return input.refuse("readings", "\"" + word + "\" is not a weight that can be read; one on each line.");
            }
        }
        if (readings.isEmpty()) {
            return Optional.empty();
        }
        if (readings.size() < FEWEST_READINGS) {
            return input.refuse(
                    "readings", "An estimate needs at least " + FEWEST_READINGS + " readings; ten are usual.");
        }
        double s = Repeatability.standardDeviationGrams(readings);
        return Optional.of(new Grams(new BigDecimal(s, THREE_DIGITS)));
    }
}
