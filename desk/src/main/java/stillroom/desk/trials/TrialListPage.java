package stillroom.desk.trials;

import java.util.List;
import stillroom.desk.shell.Frame;

/**
 * All sets of trials.
 *
 * @param starts formulas from which one may begin
 */
public record TrialListPage(Frame frame, List<Row> rows, List<Start> starts) {
    public TrialListPage {
        rows = List.copyOf(rows);
        starts = List.copyOf(starts);
    }

    public record Row(String key, String name, String product, int runs, int measured) {}

    public record Start(long product, int version, String name) {}
}
