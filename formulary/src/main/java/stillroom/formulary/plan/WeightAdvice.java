package stillroom.formulary.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.plan.PlannedLine.Advice;
import stillroom.formulary.quantity.Grams;
import stillroom.science.weighing.Steps;

/** What is to be said about the weight of one line: too little or too much for its balance, and what would mend it. */
final class WeightAdvice {
    private static final BigDecimal LARGEST_FACTOR = BigDecimal.valueOf(100);

    private WeightAdvice() {}

    static List<Advice> of(LineInHand line, Grams target, Optional<LineInHand> carrier) {
        if (line.line().percent().isZero()) {
            return List.of(new Advice(
                    "How much is expected is not stated.",
                    List.of("Have some ready, and add it up to the reading.", "State it in the formula."),
                    false));
        }
        List<Advice> advice = new ArrayList<>();
        Balance balance = line.weighing().balance();
        Grams minimum = line.weighing().minimum(line.tolerance());
        if (target.compareTo(minimum) < 0) {
            advice.add(new Advice(
                    target + " g is below " + shown(minimum) + " g, the least that " + balance.name() + " weighs to ±"
                            + line.tolerance() + " %.",
                    choices(line, target, minimum, carrier),
                    limitAtStake(line, target)));
        }
        if (target.compareTo(balance.maximum()) > 0) {
            advice.add(inSeveralPours(target, balance));
        }
        BigDecimal display = Steps.nearest(target.value(), balance.step().value());
        if (display.compareTo(target.value()) != 0) {
            advice.add(new Advice(
                    target + " g takes what rounding leaves over; " + balance.name() + " shows it as "
                            + display.toPlainString() + " g.",
                    List.of(),
                    false));
        }
        return advice;
    }

    /** Whether the least or most allowed lies within two standard deviations of the target. */
    private static boolean limitAtStake(LineInHand line, Grams target) {
        Grams spread = line.weighing().deviation().plus(line.weighing().deviation());
        return line.most()
                        .filter(most -> target.plus(spread).compareTo(most) > 0)
                        .isPresent()
                || line.least()
                        .filter(least ->
                                least.signum() > 0 && target.minus(spread).compareTo(least) < 0)
                        .isPresent();
    }

    private static List<String> choices(LineInHand line, Grams target, Grams minimum, Optional<LineInHand> carrier) {
        List<String> choices = new ArrayList<>();
        Grams larger = RoundUp.wholeFor(minimum, line.line().percent().value());
        if (larger.value().compareTo(line.batch().value().multiply(LARGEST_FACTOR)) <= 0) {
            choices.add("Make a batch of " + larger + " g or more.");
        }
        choices.add("Use a balance with a step of " + finerStep(line) + " g or finer.");
        carrier.flatMap(other -> premix(line, minimum, other)).ifPresent(choices::add);
        return choices;
    }

    /** The next decimal step whose least s, 0.41 d, keeps this weight within its tolerance. */
    static Grams finerStep(LineInHand line) {
        BigDecimal step = line.step().value();
        Grams minimum;
        do {
            step = step.movePointLeft(1);
            Balance finer = new Balance(
                    "finer",
                    new Grams(step),
                    Optional.empty(),
                    line.weighing().balance().maximum());
            minimum = new Weighing(finer, line.weighing().filledVessel()).minimum(line.tolerance());
        } while (line.exact().compareTo(minimum) < 0 && step.compareTo(new BigDecimal("0.00001")) > 0);
        return new Grams(step);
    }

    /** A dilution in a carrier of the same phase, with both weighings in range and the least waste. */
    private static Optional<String> premix(LineInHand line, Grams minimum, LineInHand carrier) {
        return Premix.of(line, minimum, carrier).map(dilution -> Premix.says(dilution, carrier.name()));
    }

    private static Advice inSeveralPours(Grams target, Balance balance) {
        BigDecimal pours = target.value().divide(balance.maximum().value(), 0, RoundingMode.CEILING);
        return new Advice(
                target + " g is more than " + balance.name() + " holds (" + balance.maximum() + " g).",
                List.of("Weigh it in " + pours.toPlainString() + " pours or more, vessel counted."),
                false);
    }

    static String shown(Grams mass) {
        return new Grams(mass.value().round(new MathContext(3, RoundingMode.HALF_EVEN))).toString();
    }
}
