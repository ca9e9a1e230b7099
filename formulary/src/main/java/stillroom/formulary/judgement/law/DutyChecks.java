package stillroom.formulary.judgement.law;

import java.util.List;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.rule.Duty;

/** What stays to be done whatever the formula. */
final class DutyChecks {
    /** Below this there is no water phase that a challenge test could speak of. */
    private static final double WATER_PHASE = 0.03;

    private DutyChecks() {}

    private static boolean concerns(Duty duty, Pot pot) {
        return switch (duty.when()) {
            case ALWAYS -> true;
            case WATER -> pot.freeWaterFraction() >= WATER_PHASE;
            case EYE ->
                pot.brief().type() == ProductType.EYE_PRODUCT
                        || pot.brief().people().contains(Brief.People.EYE_AREA);
        };
    }

    static void duties(Pot pot, Consumer<Finding> report) {
        if (pot.items().isEmpty()) {
            return;
        }
        for (Duty duty : pot.rules().duties()) {
            if (concerns(duty, pot) && duty.appliesIn(pot.brief().market())) {
                report.accept(new Finding(
                        Finding.Kind.STANDING_DUTY,
                        duty.id(),
                        duty.source(),
                        List.of(),
                        List.of(),
                        duty.says(),
                        duty.mend()));
            }
        }
    }
}
