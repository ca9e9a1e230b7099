package stillroom.desk.trials;

import java.util.List;
import stillroom.desk.shell.Frame;

/**
 * All sets of trials.
 *
 * @param starts formulas from which one may begin
 * @param curves kept ones
 */
public record TrialListPage(Frame frame, List<Row> rows, List<Start> starts, List<Curve> curves) {
    public TrialListPage {
        rows = List.copyOf(rows);
        starts = List.copyOf(starts);
        curves = List.copyOf(curves);
    }

    public record Row(String key, String name, String product, int runs, int measured) {}

    /** A kept curve of viscosity. */
    public record Curve(String key, String name, String product) {}

    public record Start(long product, int version, String name) {}
}
