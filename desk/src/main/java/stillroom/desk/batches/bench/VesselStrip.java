package stillroom.desk.batches.bench;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import stillroom.desk.batches.ActionWords;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.LogWords;
import stillroom.desk.batches.Masses;
import stillroom.desk.batches.bench.BenchPage.VesselCard;
import stillroom.desk.batches.bench.BenchPage.VesselTimer;
import stillroom.desk.shell.Format;
import stillroom.formulary.batch.BatchEvent.TimerStarted;
import stillroom.formulary.batch.NextAction;
import stillroom.formulary.batch.NextActions;
import stillroom.formulary.batch.Vessel;
import stillroom.formulary.formula.Phase;

/** The vessels in use, each with its next action. */
final class VesselStrip {
    private final BatchWork work;
    private final NextActions actions;

    VesselStrip(BatchWork work, NextActions actions) {
        this.work = work;
        this.actions = actions;
    }

    List<VesselCard> cards(String current) {
        return work.state().openVessels().stream()
                .map(vessel -> card(vessel, vessel.name().equals(current)))
                .toList();
    }

    private VesselCard card(Vessel vessel, boolean current) {
        Optional<NextAction> next = actions.next(vessel.name());
        ActionWords words = new ActionWords(work);
        return new VesselCard(
                vessel.name(),
                vessel.phases().stream()
                        .flatMap(id -> work.formula().phase(id).stream())
                        .map(Phase::name)
                        .collect(Collectors.joining(", ")),
                Masses.shown(vessel.mixture().net()),
                vessel.celsius().map(LogWords::plain).orElse(""),
                Room.of(work, vessel),
                Room.crowded(work, vessel),
                timers(vessel.name()),
                next.map(words::of).orElse(""),
                work.path() + "/bench?vessel=" + Wish.coded(vessel.name()),
                current);
    }

    private List<VesselTimer> timers(String vessel) {
        return shown(timer -> timer.vessel().equals(vessel));
    }

    /** Timers of the batch as a whole, or of a vessel that is not in use. */
    List<VesselTimer> looseTimers() {
        Set<String> open = work.state().openVessels().stream().map(Vessel::name).collect(Collectors.toSet());
        return shown(timer -> !open.contains(timer.vessel()));
    }

    private List<VesselTimer> shown(Predicate<TimerStarted> which) {
        return work.state().timers().stream()
                .filter(timer -> which.test(timer.event()))
                .map(timer -> new VesselTimer(
                        timer.event().timer(),
                        timer.event().label(),
                        timer.event().until().toString(),
                        Format.time(timer.event().until(), work.desk().zone()),
                        timer.event().vessel()))
                .toList();
    }
}
