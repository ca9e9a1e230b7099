package stillroom.desk.batches;

import java.util.List;
import stillroom.desk.batches.ReadingRows.ReadingRow;
import stillroom.desk.shell.Format;
import stillroom.formulary.batch.BatchEvent.ReadingTaken;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.meter.MeterMarks;

/** The readings of a batch as a table, oldest first. */
public final class ReadingRows {
    private ReadingRows() {}

    /**
     * One reading.
     *
     * @param mark what speaks against the meter at that moment, empty for nothing
     */
    public record ReadingRow(String at, String kind, String value, String how, String words, String by, String mark) {}

    public static List<ReadingRow> of(BatchWork work) {
        MeterMarks meters = PhTrends.meters(work);
        return work.state().readings().stream()
                .map(reading -> row(work, reading, meters))
                .toList();
    }

    private static ReadingRow row(BatchWork work, Logged<ReadingTaken> reading, MeterMarks meters) {
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
                reading.by(),
                event.kind() == ReadingKind.PH ? meters.of(event.how(), reading.at()) : "");
    }
}
