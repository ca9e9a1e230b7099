package stillroom.desk.law;

import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/**
 * Every formula judged by the law of two days: the form, how far it has come, or what changes.
 *
 * @param state which of these the page shows
 * @param about what was asked, in words
 * @param summary how many formulas are touched how much
 * @param byRule what most formulas meet, most first
 * @param rows one page of the formulas for which something changes
 */
public record SweepPage(
        Frame frame,
        Typed typed,
        List<Choice> which,
        State state,
        String about,
        int products,
        int done,
        int formulas,
        String seconds,
        List<Choice> summary,
        List<RuleCount> byRule,
        List<FormulaRow> rows,
        List<String> failed,
        String earlier,
        String later) {
    /** How far it is. */
    public enum State {
        NONE,
        RUNNING,
        STOPPED,
        DONE
    }

    public SweepPage {
        which = List.copyOf(which);
        summary = List.copyOf(summary);
        byRule = List.copyOf(byRule);
        rows = List.copyOf(rows);
        failed = List.copyOf(failed);
    }

    /** What happens to how many formulas. */
    public record RuleCount(String what, String rule, int formulas) {}

    /** One formula. */
    public record FormulaRow(String name, String path, String weight, List<PointRow> points) {
        public FormulaRow {
            points = List.copyOf(points);
        }
    }

    /** One thing that changes for it. */
    public record PointRow(String what, String rule, String says) {}
}
