package stillroom.desk.batches;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.ReadingRows.ReadingRow;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.formulary.batch.NextAction;
import stillroom.formulary.batch.NextActions;
import stillroom.formulary.batch.Yield;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Grams;

/**
 * One batch at a glance.
 *
 * @param planned mass of the plan, empty when weighed free hand
 * @param reckoning how the size came about
 * @param put what was put in so far [g]
 * @param recipe address of the recipe sheet, empty when weighed free hand
 * @param next what comes next, at most a few
 * @param progress per phase how many lines are in and how many steps are done
 * @param chart pH over time, where there are readings to draw
 * @param trends whether the pH moves over the days, one for each way of reading
 */
public record OverviewPage(
        Frame frame,
        BatchHead head,
        String planned,
        String reckoning,
        String put,
        String opened,
        String due,
        String recipe,
        List<String> next,
        List<Progress> progress,
        List<ReadingRow> readings,
        Optional<PhChart> chart,
        List<PhTrends.TrendRow> trends,
        List<LogLine> log) {
    private static final int NEXT = 4;

    public OverviewPage {
        next = List.copyOf(next);
        progress = List.copyOf(progress);
        readings = List.copyOf(readings);
        trends = List.copyOf(trends);
        log = List.copyOf(log);
    }

    /** How far a phase is. */
    public record Progress(String phase, int lines, int linesDone, int steps, int stepsDone) {
        /** Share of all that is done, 0 to 100. */
        public int percent() {
            int all = lines + steps;
            return all == 0 ? 100 : 100 * (linesDone + stepsDone) / all;
        }
    }

    static OverviewPage of(BatchWork work, Frame frame) {
        Optional<Plan> plan = work.plan();
        return new OverviewPage(
                frame,
                BatchHead.of(work),
                plan.map(p -> Format.grams(p.batch())).orElse(""),
                plan.map(Plan::reckoning).orElse(""),
                Format.grams(Yield.of(work.state()).added()),
                Format.day(work.batch().openedOn()),
                work.state()
                        .rest()
                        .map(rest ->
                                Format.moment(rest.event().due(), work.desk().zone()))
                        .orElse(""),
                work.batch()
                        .version()
                        .map(number -> "/products/" + work.product().id() + "/versions/" + number + "/recipe.pdf"
                                + plan.map(p -> "?grams=" + p.batch()).orElse(""))
                        .orElse(""),
                next(work),
                plan.map(p -> progress(work, p)).orElse(List.of()),
                ReadingRows.of(work),
                PhChart.of(work),
                PhTrends.of(work),
                LogLine.of(work));
    }

    private static List<String> next(BatchWork work) {
        NextActions actions = work.actions();
        ActionWords words = new ActionWords(work);
        List<String> next = new ArrayList<>();
        work.state()
                .openVessels()
                .forEach(vessel -> actions.next(vessel.name())
                        .filter(action -> !(action instanceof NextAction.WaitFor)
                                && !(action instanceof NextAction.Combine combine
                                        && combine.from().equals(vessel.name())))
                        .ifPresent(action -> next.add(vessel.name() + ": " + words.of(action))));
        actions.batch().forEach(action -> next.add(words.of(action)));
        return next.stream().limit(NEXT).toList();
    }

    private static List<Progress> progress(BatchWork work, Plan plan) {
        return work.formula().phases().stream()
                .map(phase -> progress(work, plan, phase))
                .filter(progress -> progress.lines() + progress.steps() > 0)
                .toList();
    }

    private static Progress progress(BatchWork work, Plan plan, Phase phase) {
        List<PlannedLine> lines = plan.lines().stream()
                .filter(line -> line.phaseId().equals(phase.id()))
                .toList();
        int done = (int) lines.stream().filter(line -> isIn(work, line)).count();
        int steps = (int) phase.steps().stream()
                .filter(step -> work.state().steps().stream()
                        .anyMatch(one ->
                                one.event().stepId().filter(step.id()::equals).isPresent()))
                .count();
        return new Progress(phase.name(), lines.size(), done, phase.steps().size(), steps);
    }

    private static boolean isIn(BatchWork work, PlannedLine line) {
        Grams poured = work.state().poured(line.lineId());
        boolean within = poured.minus(line.target()).abs().compareTo(line.tolerance()) <= 0;
        return work.state().accepted().containsKey(line.lineId())
                || (poured.signum() > 0 && (within || line.toReading()));
    }
}
