package stillroom.formulary.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Step;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Grams;

/** What of a phase is still open: lines to weigh, steps to do, and last what is added up to a reading. */
record OpenWork(Formula formula, Plan plan, BatchState state) {

    List<NextAction> of(Phase phase) {
        List<PlannedLine> lines = plan.lines().stream()
                .filter(line -> line.phaseId().equals(phase.id()))
                .toList();
        List<NextAction> open = new ArrayList<>();
        lines.stream()
                .filter(line -> !line.toReading())
                .forEach(line -> weighing(line).ifPresent(open::add));
        phase.steps().stream()
                .filter(step -> !done(step))
                .forEach(step -> open.add(new NextAction.DoStep(phase.id(), step)));
        lines.stream()
                .filter(line -> line.toReading() && !readingReached(line))
                .forEach(line -> open.add(new NextAction.AddToReading(line, state.poured(line.lineId()))));
        return open;
    }

    private Optional<NextAction> weighing(PlannedLine line) {
        if (state.accepted().containsKey(line.lineId())) {
            return Optional.empty();
        }
        Grams poured = state.poured(line.lineId());
        Grams off = poured.minus(line.target());
        if (off.abs().compareTo(line.tolerance()) <= 0
                && (poured.signum() > 0 || line.target().isZero())) {
            return Optional.empty();
        }
        return Optional.of(
                off.signum() < 0
                        ? new NextAction.Weigh(line, poured, off.negated())
                        : new NextAction.SettleOver(line, poured, off));
    }

    private boolean done(Step step) {
        return state.steps().stream()
                .anyMatch(
                        done -> done.event().stepId().filter(step.id()::equals).isPresent());
    }

    /** Accepted, or read since the last planned pour and the last pour of this line. */
    private boolean readingReached(PlannedLine line) {
        if (state.accepted().containsKey(line.lineId())) {
            return true;
        }
        int lastPour = state.pours().stream()
                .filter(pour -> pour.event().purpose() == Purpose.LINE
                        || pour.event().lineId().filter(line.lineId()::equals).isPresent())
                .mapToInt(Logged::number)
                .max()
                .orElse(0);
        return formula.line(line.lineId())
                .map(Line::amount)
                .filter(Amount.ToReading.class::isInstance)
                .map(Amount.ToReading.class::cast)
                .filter(amount -> state.readings(amount.reading()).stream().anyMatch(read -> read.number() > lastPour))
                .isPresent();
    }
}
