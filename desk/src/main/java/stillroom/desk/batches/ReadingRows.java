package stillroom.desk.batches;

import java.util.List;
import stillroom.desk.batches.ReadingRows.ReadingRow;
import stillroom.desk.shell.Format;
import stillroom.formulary.batch.BatchEvent.ReadingTaken;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.formula.ReadingKind;

/** The readings of a batch as a table, oldest first. */
public final class ReadingRows {
    private ReadingRows() {}

    /** One reading. */
    public record ReadingRow(String at, String kind, String value, String how, String words, String by) {}

    public static List<ReadingRow> of(BatchWork work) {
        return work.state().readings().stream()
                .map(reading -> row(work, reading))
                .toList();
    }

    private static ReadingRow row(BatchWork work, Logged<ReadingTaken> reading) {
        ReadingTaken event = reading.event();
        String unit = event.kind() == ReadingKind.PH ? "" : " " + event.unit();
        return new ReadingRow(
                Format.moment(reading.at(), work.desk().zone()),
                LogWords.kind(event.kind()),
                event.value()
                        .map(value -> (LogWords.plain(value) + unit).strip())
                        .orElse(""),
                LogWords.how(event.how()),
                event.words(),
                reading.by());
    }
}
