package stillroom.desk.law;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillroom.desk.law.Sweep.Changed;
import stillroom.desk.law.SweepPage.FormulaRow;
import stillroom.desk.law.SweepPage.PointRow;
import stillroom.desk.law.SweepPage.RuleCount;
import stillroom.desk.law.SweepPage.State;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/** Makes the page of a sweep. */
final class SweepView {
    static final int SIZE = 50;
    private static final int MOST_RULES = 30;
    private static final int MOST_FAILED = 20;

    private SweepView() {}

    static SweepPage of(Frame frame, Typed typed, Optional<Sweep> sweep, int page) {
        List<Choice> which = Choice.of(Sweep.Which.class, Sweep.Which::words);
        if (sweep.isEmpty()) {
            return new SweepPage(
                    frame,
                    typed,
                    which,
                    State.NONE,
                    "",
                    0,
                    0,
                    0,
                    "",
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    "",
                    "");
        }
        Sweep one = sweep.get();
        State state = one.isRunning() ? State.RUNNING : one.isStopped() ? State.STOPPED : State.DONE;
        List<Changed> changed = one.changed();
        int from = Math.min(page * SIZE, changed.size());
        int to = Math.min(from + SIZE, changed.size());
        boolean ended = state != State.RUNNING;
        return new SweepPage(
                frame,
                typed,
                which,
                state,
                "From the law of " + Format.day(one.wish().from()) + " to that of "
                        + Format.day(one.wish().to()) + ", "
                        + one.wish().which().words() + ".",
                one.products(),
                one.done(),
                one.formulas(),
                Format.figure(one.seconds(), 1),
                summary(one, changed),
                ended ? byRule(changed) : List.of(),
                ended ? changed.subList(from, to).stream().map(SweepView::row).toList() : List.of(),
                one.failed().stream()
                        .limit(MOST_FAILED)
                        .map(failed -> failed.product() + ": " + failed.why())
                        .toList(),
                ended && page > 0 ? "/law/sweep?page=" + page : "",
                ended && to < changed.size() ? "/law/sweep?page=" + (page + 2) : "");
    }

    private static List<Choice> summary(Sweep sweep, List<Changed> changed) {
        List<Choice> summary = new ArrayList<>();
        for (Point.Weight weight : Point.Weight.values()) {
            long count = weight == Point.Weight.NONE
                    ? sweep.formulas() - changed.size()
                    : changed.stream().filter(one -> one.weight() == weight).count();
            summary.add(new Choice(Long.toString(Math.max(0, count)), weight.words()));
        }
        return summary;
    }

    /** Each formula counts once for a rule and what happens by it. */
    private static List<RuleCount> byRule(List<Changed> changed) {
        Map<List<String>, Integer> counts = new LinkedHashMap<>();
        for (Changed one : changed) {
            Set<List<String>> met = new LinkedHashSet<>();
            one.points()
                    .forEach(point -> met.add(List.of(
                            point.rule().isEmpty() ? point.what() + " " + point.says() : point.what(), point.rule())));
            met.forEach(key -> counts.merge(key, 1, Integer::sum));
        }
        return counts.entrySet().stream()
                .map(one -> new RuleCount(one.getKey().get(0), one.getKey().get(1), one.getValue()))
                .sorted(Comparator.comparing(RuleCount::formulas).reversed().thenComparing(RuleCount::rule))
                .limit(MOST_RULES)
                .toList();
    }

    private static FormulaRow row(Changed changed) {
        return new FormulaRow(
                changed.product() + ", version " + changed.version() + (changed.kept() ? "" : " (draft)"),
                changed.path(),
                changed.weight().words(),
                changed.points().stream()
                        .map(point -> new PointRow(point.what(), point.rule(), point.says()))
                        .toList());
    }
}
