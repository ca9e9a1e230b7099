package stillroom.desk.sidebyside;

import java.util.List;
import stillroom.desk.pictures.PicturesPage.Shot;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;

/**
 * Several versions beside each other.
 *
 * @param columns the versions, in the order asked
 * @param tooMany how many more were asked for than fit
 * @param measured of those that are runs of trials
 * @param others versions that can be put beside them
 */
public record SideBySidePage(
        Frame frame,
        List<Column> columns,
        List<Choice> others,
        int tooMany,
        List<Row> lines,
        List<Row> substances,
        List<Row> figures,
        List<Row> measured,
        List<Row> readings) {
    public SideBySidePage {
        columns = List.copyOf(columns);
        others = List.copyOf(others);
        lines = List.copyOf(lines);
        substances = List.copyOf(substances);
        figures = List.copyOf(figures);
        measured = List.copyOf(measured);
        readings = List.copyOf(readings);
    }

    /**
     * One version.
     *
     * @param address how it is asked for: product, full stop, version
     * @param href its own page
     * @param without the address of this page without it
     * @param batches by path, newest first
     * @param findings breaches and probable faults, in sentences
     */
    public record Column(
            String address,
            String name,
            String href,
            String without,
            List<Choice> batches,
            List<String> findings,
            List<Shot> shots) {
        public Column {
            batches = List.copyOf(batches);
            findings = List.copyOf(findings);
            shots = List.copyOf(shots);
        }
    }

    /** @param cells one per column */
    public record Row(String name, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        public boolean differs() {
            return cells.stream().distinct().count() > 1;
        }
    }

    public boolean anyShots() {
        return columns.stream().anyMatch(column -> !column.shots().isEmpty());
    }
}
