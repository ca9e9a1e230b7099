package stillroom.formulary.plan;

import java.util.ArrayList;
import java.util.List;
import stillroom.formulary.plan.PlannedLine.Advice;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.PercentRange;
import stillroom.science.weighing.Steps;

/** What is to be said where a law, or the minimum of a preservative, leaves only some percentages. */
final class LimitAdvice {
    private LimitAdvice() {}

    static List<Advice> of(LineInHand line, Grams target, boolean noStepBetween) {
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
                    Grams most = notAbove(line, allowed.high().of(line.batch()));
                    advice.add(new Advice(
                            "Stop at " + most + " g: more than " + allowed.high() + " % is not allowed.",
                            List.of(),
                            false));
                });
        advice.addAll(insideTheTolerance(line, target));
        return advice;
    }

    /** The tolerance is the maker's, the limit is not: where the limit comes first it is said. */
    private static List<Advice> insideTheTolerance(LineInHand line, Grams target) {
        List<Advice> advice = new ArrayList<>();
        Grams tolerance = line.toleranceAt(target);
        line.most()
                .filter(most -> line.line().reading().isEmpty()
                        && target.plus(tolerance).compareTo(most) > 0)
                .ifPresent(most -> advice.add(new Advice(
                        "Not above " + notAbove(line, most) + " g, whatever the tolerance: the limit comes first.",
                        List.of(),
                        false)));
        line.least()
                .filter(least -> least.signum() > 0 && target.minus(tolerance).compareTo(least) < 0)
                .ifPresent(least -> advice.add(new Advice(
                        "Not below " + notBelow(line, least) + " g, whatever the tolerance: less may not preserve.",
                        List.of(),
                        false)));
        return advice;
    }

    private static Grams notAbove(LineInHand line, Grams most) {
        return new Grams(Steps.notAbove(most.value(), line.step().value()));
    }

    private static Grams notBelow(LineInHand line, Grams least) {
        return new Grams(Steps.notBelow(least.value(), line.step().value()));
    }

    private static String shown(PercentRange allowed) {
        return allowed.low() + " to " + allowed.high() + " %";
    }
}
