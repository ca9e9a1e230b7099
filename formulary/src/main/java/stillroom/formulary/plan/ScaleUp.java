package stillroom.formulary.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Step;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.plan.PlannedLine.Advice;
import stillroom.formulary.quantity.Grams;

/**
 * What changes against the largest batch made so far.
 *
 * @param largestMade none for a first batch
 * @param vessel capacity of the main vessel [g]
 * @param logged minutes that the steps took in the largest batch, by the step's id; they go before the procedure's
 */
public record ScaleUp(
        Plan plan,
        Formula formula,
        MaterialBook book,
        Optional<Grams> largestMade,
        Optional<Grams> vessel,
        List<Balance> balances,
        Map<String, Double> logged) {
    /** From here on a step is a hot one. Common practice, no source [degrees Celsius]. */
    static final double HOT = 40;

    /** More than this at once is a leap. Common practice, no source. */
    private static final double MOST_AT_ONCE = 10;
    /** A vessel stirs well between these fills [%]. Common practice, no source. */
    private static final BigDecimal LEAST_FILL = BigDecimal.valueOf(40);

    private static final BigDecimal MOST_FILL = BigDecimal.valueOf(80);
    private static final double NOTEWORTHY = 1.5;

    public ScaleUp {
        balances = List.copyOf(balances);
        logged = Map.copyOf(logged);
    }

    /** Everything worth saying before a larger batch; nothing of it refuses. */
    public List<Advice> advice() {
        List<Advice> advice = new ArrayList<>();
        vessel.flatMap(this::fill).ifPresent(advice::add);
        largestMade
                .map(this::factor)
                .filter(factor -> factor > NOTEWORTHY)
                .ifPresent(factor -> advice.addAll(larger(factor)));
        advice.addAll(tooHeavy());
        advice.addAll(manyPours());
        advice.addAll(manyLots());
        return advice;
    }

    /** How many times the largest batch so far. */
    private double factor(Grams before) {
        return plan.batch().doubleValue() / before.doubleValue();
    }

    /**
     * A body of the same shape cools longer by the cube root of its mass: heat grows with the volume, the surface only
     * with its two-thirds power, and the distance to it with the cube root. A lower bound without stirring or a bath.
     */
    public static double coolingFactor(double massFactor) {
        return Math.cbrt(massFactor);
    }

    /** Whether a vessel of this capacity has the room that stirring and foam need [g]. */
    public static boolean leavesRoom(Grams batch, Grams capacity) {
        return batch.value().movePointRight(2).compareTo(capacity.value().multiply(MOST_FILL)) <= 0;
    }

    private List<Advice> larger(double factor) {
        List<Advice> advice = new ArrayList<>();
        if (factor > MOST_AT_ONCE) {
            advice.add(said(
                    "This is " + figure(factor) + " times the largest batch so far.",
                    "Go up at most tenfold at a time: make "
                            + largestMade.map(g -> tenfold(g)).orElse("less") + " g first."));
        }
        if (formula.phases().stream().anyMatch(phase -> phase.steps().stream().anyMatch(ScaleUp::isHeated))) {
            advice.add(said(
                    "Cooling takes at least " + figure(coolingFactor(factor)) + " times as long.",
                    "Plan for it, or cool in a bath; mind how long each material stays hot."));
        }
        PlannedHeat.of(formula, book, this::minutes).forEach(heat -> advice.add(hot(heat, coolingFactor(factor))));
        for (Step step : timed()) {
            advice.add(said(
                    "\"" + step.doing() + "\" was timed at the smaller size.",
                    "Measure again by what can be seen; times are not scaled."));
        }
        advice.add(said("The dose to a reading does not scale safely.", "Take a new sample for the pH of this batch."));
        return advice;
    }

    private Optional<Double> minutes(Step step) {
        return Optional.ofNullable(logged.get(step.id())).or(step::minutes);
    }

    /** The figures stand beside each other: as it was, and as it will at least be. */
    private static Advice hot(PlannedHeat heat, double coolingFactor) {
        String sum = heat.untimed() ? " that are timed" : "";
        return said(
                heat.materialKey() + " bears " + figure(heat.limit()) + " °C. So far it stood " + figure(heat.minutes())
                        + " min" + sum + " above that, up to " + figure(heat.hottest()) + " °C; in this batch at least "
                        + figure(heat.minutes(coolingFactor)) + " min.",
                heat.untimed()
                        ? "A hot step has no minutes: log them, else the sum is short."
                        : "Add it later, hold less long, or cool in a bath.");
    }

    private List<Advice> tooHeavy() {
        return balances.stream()
                .max(Comparator.comparing(Balance::maximum))
                .filter(balance -> plan.batch().compareTo(balance.maximum()) > 0)
                .map(balance -> said(
                        "No balance holds the whole batch: " + balance.name() + " ends at " + balance.maximum() + " g.",
                        "Weigh beside and pour in; what evaporates cannot be weighed then."))
                .stream()
                .toList();
    }

    private Optional<Advice> fill(Grams capacity) {
        BigDecimal percent = plan.batch().value().movePointRight(2).divide(capacity.value(), MathContext.DECIMAL32);
        String found = "The batch fills the vessel to " + figure(percent.doubleValue()) + " %.";
        if (percent.compareTo(MOST_FILL) > 0) {
            return Optional.of(said(found, "Take a larger vessel: 80 % leaves room for stirring and foam."));
        }
        return percent.compareTo(LEAST_FILL) < 0
                ? Optional.of(said(found, "Take a smaller vessel: below 40 % stirrers draw in air."))
                : Optional.empty();
    }

    private List<Advice> manyPours() {
        return plan.lines().stream()
                .flatMap(line -> balances.stream()
                        .filter(balance -> balance.name().equals(line.balance()))
                        .filter(balance -> line.target().compareTo(balance.maximum()) > 0)
                        .map(balance -> said(
                                line.materialKey() + " is more than " + balance.name() + " holds.",
                                "Weigh it in several pours and tick each.")))
                .toList();
    }

    private List<Advice> manyLots() {
        return plan.lines().stream()
                .filter(line -> line.lots().size() > 1)
                .map(line -> said(
                        line.materialKey() + " comes from " + line.lots().size() + " lots.",
                        "Lots may differ in strength: note which went where."))
                .toList();
    }

    private List<Step> timed() {
        return formula.phases().stream()
                .flatMap(phase -> phase.steps().stream())
                .filter(step -> step.minutes().isPresent())
                .toList();
    }

    private static boolean isHeated(Step step) {
        return step.celsius().filter(celsius -> celsius >= HOT).isPresent();
    }

    private static Advice said(String says, String choice) {
        return new Advice(says, List.of(choice), false);
    }

    private static String tenfold(Grams before) {
        return new Grams(before.value().movePointRight(1)).toString();
    }

    private static String figure(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
