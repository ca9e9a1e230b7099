package stillroom.desk.law;

import java.time.LocalDate;
import java.util.List;
import stillroom.desk.shell.Frame;

/** The rows of one table as recorded, those in force on the day marked. */
public record TablePage(
        Frame frame, String market, String marketWords, String table, LocalDate day, String dayWords, List<Row> rows) {
    public TablePage {
        rows = List.copyOf(rows);
    }

    /** One row. */
    public record Row(
            String id,
            String entry,
            String name,
            String substances,
            String asks,
            String scope,
            String days,
            boolean counts,
            String source,
            String reading,
            String amendedBy,
            String note) {}
}
