package stillroom.formulary.plan;

import java.util.ArrayList;
import java.util.List;
import stillroom.formulary.plan.PlannedLine.Advice;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.PercentRange;

/** What is to be said where a law, or the minimum of a preservative, leaves only some percentages. */
final class LimitAdvice {
    private LimitAdvice() {}

    static List<Advice> of(LineInHand line, boolean noStepBetween) {
        if (line.allowed().isEmpty()) {
            return List.of();
        }
        PercentRange allowed = line.allowed().get();
        List<Advice> advice = new ArrayList<>();
        if (line.askedOutside()) {
            advice.add(new Advice(
                    "The formula asks for " + line.line().percent() + " %, allowed " + shown(allowed) + ".",
                    List.of("Change the formula."),
                    true));
        }
        if (noStepBetween) {
            advice.add(new Advice(
                    "No step of " + line.weighing().balance().name() + " lies between the least and the most allowed ("
                            + shown(allowed) + ").",
                    List.of(
                            "Use a balance with a step of " + WeightAdvice.finerStep(line) + " g or finer.",
                            "Make a larger batch."),
                    true));
        }
        line.line()
                .reading()
                .filter(range -> range.high().compareTo(allowed.high()) > 0)
                .ifPresent(range -> {
                    Grams most = allowed.high().of(line.batch());
                    advice.add(new Advice(
                            "Stop at " + WeightAdvice.shown(most) + " g: more than " + allowed.high()
                                    + " % is not allowed.",
                            List.of(),
                            false));
                });
        return advice;
    }

    private static String shown(PercentRange allowed) {
        return allowed.low() + " to " + allowed.high() + " %";
    }
}
