package stillroom.formulary.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.formula.Line;
import stillroom.formulary.quantity.Grams;
import stillroom.science.weighing.Dilution;
import stillroom.science.weighing.Steps;

/**
 * The premix that a teacher makes for all sets, so that each person weighs a portion that the balances in the class can weigh.
 * Its portion is three times the least that keeps 2 %, where the carrier suffices; that factor is common practice, no source.
 */
public final class ClassPremix {
    private static final Tolerances TOLERANCES = Tolerances.USUAL;
    private static final BigDecimal EASY = BigDecimal.valueOf(3);

    private ClassPremix() {}

    /**
     * The premix for all sets; empty where the carrier of one set does not suffice for a portion that can be weighed.
     *
     * @param own what one set holds of the line's material [g]
     * @param carrierThere what one set holds of the carrier [g]
     */
    public static Optional<PremixPlan> of(ClassOf lesson, Line line, Line carrier, Grams own, Grams carrierThere) {
        Balance balance = new Balance("class", lesson.step(), Optional.empty(), new Grams(new BigDecimal("1000000")));
        Weighing weighing = new Weighing(balance, true);
        BigDecimal least = weighing.minimum(TOLERANCES.narrow()).value();
        BigDecimal most = own.plus(carrierThere).value();
        BigDecimal wished = least.multiply(EASY).max(own.value()).min(most);
        BigDecimal portion = Steps.notBelow(wished, lesson.step().value())
                .min(Steps.notAbove(most, lesson.step().value()));
        if (portion.compareTo(least) < 0 || portion.compareTo(own.value()) <= 0) {
            return Optional.empty();
        }
        BigDecimal step = lesson.step().value();
        BigDecimal concentrate = Steps.notBelow(lesson.forAll(own).value(), step);
        BigDecimal made = concentrate.multiply(portion).divide(own.value(), MathContext.DECIMAL64);
        BigDecimal inCarrier = Steps.nearest(made.subtract(concentrate), step);
        BigDecimal brings = portion.multiply(concentrate).divide(concentrate.add(inCarrier), MathContext.DECIMAL64);
        double relative = Math.hypot(
                weighing.deviation().doubleValue() / portion.doubleValue(),
                weighing.deviation().doubleValue() / concentrate.doubleValue());
        Dilution dilution = new Dilution(
                List.of(new Dilution.Step(concentrate, inCarrier)),
                portion,
                brings,
                brings.multiply(BigDecimal.valueOf(relative), MathContext.DECIMAL64));
        return Optional.of(new PremixPlan(line, carrier, dilution));
    }
}
