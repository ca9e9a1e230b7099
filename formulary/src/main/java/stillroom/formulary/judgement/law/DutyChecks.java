package stillroom.formulary.judgement.law;

import java.util.List;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.rule.Duty;

/** What stays to be done whatever the formula. */
final class DutyChecks {
    /** Below this there is no water phase that a challenge test could speak of. */
    private static final double WATER_PHASE = 0.03;

    private DutyChecks() {}

    static void duties(Pot pot, Consumer<Finding> report) {
        if (pot.items().isEmpty()) {
            return;
        }
        for (Duty duty : pot.rules().duties()) {
            boolean concerns = duty.when() == Duty.When.ALWAYS || pot.freeWaterFraction() >= WATER_PHASE;
            if (concerns && duty.appliesIn(pot.brief().market())) {
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
