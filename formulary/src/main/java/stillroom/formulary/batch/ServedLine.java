package stillroom.formulary.batch;

import java.util.Optional;
import stillroom.formulary.batch.BatchEvent.Poured;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;

/** A correction with the material of a line that is added up to a reading is that line's, however it was entered. */
final class ServedLine {
    private ServedLine() {}

    static Poured of(Poured pour, Optional<Plan> plan) {
        boolean settled =
                pour.lineId().isPresent() || pour.purpose() == Purpose.LINE || pour.purpose() == Purpose.MISTAKE;
        return settled
                ? pour
                : plan.stream()
                        .flatMap(one -> one.lines().stream())
                        .filter(PlannedLine::toReading)
                        .filter(line -> line.materialKey().equals(pour.materialKey()))
                        .findFirst()
                        .map(line -> serving(pour, line.lineId()))
                        .orElse(pour);
    }

    private static Poured serving(Poured pour, String lineId) {
        return new Poured(
                pour.vessel(),
                Optional.of(lineId),
                pour.materialKey(),
                pour.lot(),
                pour.mass(),
                pour.purpose(),
                pour.balance(),
                pour.checkedBy(),
                pour.note(),
                pour.scanned());
    }
}
