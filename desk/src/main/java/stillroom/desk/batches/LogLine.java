package stillroom.desk.batches;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stillroom.desk.shell.Format;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.batch.PourCheck;

/**
 * One entry of the log as it is shown.
 *
 * @param struck whether it does not count
 * @param because why it was struck, and by whom
 * @param weighing whether it is a weighing that may be read again
 * @param check what a second look showed, or who checked it; empty for none
 * @param mayStrike whether striking it means something
 */
public record LogLine(
        int number,
        String at,
        String by,
        String says,
        boolean struck,
        String because,
        boolean weighing,
        String check,
        boolean mayStrike) {
    /** The whole log, newest first. */
    public static List<LogLine> of(BatchWork work) {
        return of(work, new LogWords(work));
    }

    /** The whole log in these words, newest first. */
    public static List<LogLine> of(BatchWork work, LogWords words) {
        Map<Integer, String> because = becauses(work);
        Map<Integer, String> checks = checks(work);
        List<LogLine> lines = new ArrayList<>();
        for (LogEntry entry : work.log()) {
            boolean struck = work.state().struck().contains(entry.number());
            lines.add(
                    0,
                    new LogLine(
                            entry.number(),
                            Format.moment(entry.at(), work.desk().zone()),
                            entry.by(),
                            words.say(entry.event()),
                            struck,
                            struck ? because.getOrDefault(entry.number(), "") : "",
                            entry.event() instanceof BatchEvent.Poured,
                            checks.getOrDefault(entry.number(), ""),
                            !struck && !(entry.event() instanceof BatchEvent.Planned)));
        }
        return lines;
    }

    /** The same entry in other words. */
    public LogLine saying(String other) {
        return new LogLine(number, at, by, other, struck, because, weighing, check, mayStrike);
    }

    /** By number of the weighing, what a second look at it was worth. */
    private static Map<Integer, String> checks(BatchWork work) {
        Map<Integer, String> checks = new HashMap<>();
        for (Logged<BatchEvent.Poured> pour : work.state().pours()) {
            PourCheck check = work.state().check(pour);
            String by = check.by().isEmpty() || check.kind() == PourCheck.Kind.SELF_CHECKED ? "" : " by " + check.by();
            checks.put(pour.number(), check.kind().words() + by);
        }
        return checks;
    }

    private static Map<Integer, String> becauses(BatchWork work) {
        Map<Integer, String> because = new HashMap<>();
        for (LogEntry entry : work.log()) {
            if (entry.event() instanceof BatchEvent.Struck struck
                    && !work.state().struck().contains(entry.number())) {
                because.put(struck.entry(), struck.reason() + " (" + entry.by() + ")");
            }
        }
        return because;
    }
}
