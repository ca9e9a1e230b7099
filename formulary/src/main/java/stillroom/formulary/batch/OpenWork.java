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

/**
 * What of a phase is still open: lines to weigh, steps to do, and last what is added up to a reading.
 *
 * @param pH what the band asks for
 */
record OpenWork(Formula formula, Plan plan, BatchState state, PhWork pH) {

    List<NextAction> of(Phase phase, String vessel) {
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
        state.surplusOpen().stream()
                .filter(surplus -> surplus.phaseId().equals(phase.id()))
                .forEach(surplus -> open.add(new NextAction.TakeOut(phase.id(), phase.name(), surplus.mass())));
        lines.stream()
                .filter(PlannedLine::toReading)
                .forEach(line -> toReading(line, vessel)
                        .ifPresent(action -> open.add(begun(line, action) ? 0 : open.size(), action)));
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

    /** Once the line is begun, its reading and its correction go before what is left of the phase. */
    private boolean begun(PlannedLine line, NextAction action) {
        boolean readBefore = action instanceof NextAction.AddToReading add && !add.unread();
        return state.poured(line.lineId()).signum() > 0 && !readBefore;
    }

    private Optional<NextAction> toReading(PlannedLine line, String vessel) {
        if (state.accepted().containsKey(line.lineId())) {
            return Optional.empty();
        }
        boolean toPh = formula.line(line.lineId()).filter(PhWork::toPh).isPresent();
        Optional<NextAction> asked = toPh ? pH.of(line, vessel) : Optional.empty();
        if (asked.isPresent() || readSince(line, lastPour(line))) {
            return asked;
        }
        Grams poured = state.poured(line.lineId());
        boolean unread = poured.signum() > 0 && !readSince(line, ownPour(line));
        return Optional.of(new NextAction.AddToReading(line, poured, unread));
    }

    /** The last planned pour, or the last of this line. */
    private int lastPour(PlannedLine line) {
        int planned = state.pours().stream()
                .filter(pour -> pour.event().purpose() == Purpose.LINE)
                .mapToInt(Logged::number)
                .max()
                .orElse(0);
        return Math.max(planned, ownPour(line));
    }

    private int ownPour(PlannedLine line) {
        return state.pours().stream()
                .filter(pour ->
                        pour.event().lineId().filter(line.lineId()::equals).isPresent())
                .mapToInt(Logged::number)
                .max()
                .orElse(0);
    }

    private boolean readSince(PlannedLine line, int pour) {
        return formula.line(line.lineId())
                .map(Line::amount)
                .filter(Amount.ToReading.class::isInstance)
                .map(Amount.ToReading.class::cast)
                .filter(amount -> state.readings(amount.reading()).stream().anyMatch(read -> read.number() > pour))
                .isPresent();
    }
}
