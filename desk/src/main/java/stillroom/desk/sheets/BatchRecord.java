package stillroom.desk.sheets;

import java.util.List;
import stillroom.desk.batches.LogLine;
import stillroom.desk.batches.ReadingRows.ReadingRow;

/**
 * The record of a batch, to be printed and signed. Its parts follow what ISO 22716:2007, chapter 7, asks a record of
 * production to hold (headings from memory).
 *
 * @param facts name and value, in order
 * @param deviations each with its reason, or that none is given
 * @param reconciliation name and grams, in order
 * @param decision by whom and why; empty while the batch is undecided
 * @param headHash of the newest log entry: alters if anything before it does
 */
public record BatchRecord(
        String product,
        String code,
        String workshop,
        boolean demonstration,
        String printed,
        List<Fact> facts,
        List<Weighing> weighings,
        List<Made> made,
        List<Vessel> vessels,
        List<ReadingRow> readings,
        List<Picture> pictures,
        List<String> deviations,
        List<Fact> reconciliation,
        List<String> fills,
        List<String> fillChecks,
        List<String> concerns,
        List<LogLine> log,
        List<String> overruled,
        String decision,
        String headHash) {
    public BatchRecord {
        facts = List.copyOf(facts);
        weighings = List.copyOf(weighings);
        made = List.copyOf(made);
        vessels = List.copyOf(vessels);
        readings = List.copyOf(readings);
        pictures = List.copyOf(pictures);
        deviations = List.copyOf(deviations);
        reconciliation = List.copyOf(reconciliation);
        fills = List.copyOf(fills);
        fillChecks = List.copyOf(fillChecks);
        concerns = List.copyOf(concerns);
        log = List.copyOf(log);
        overruled = List.copyOf(overruled);
    }

    /**
     * A photograph.
     *
     * @param source the picture itself, as a data address
     */
    public record Picture(String source, String when, String words) {}

    /** A name and what stands behind it. */
    public record Fact(String name, String value) {}

    /** One pour that counts. */
    public record Weighing(
            int entry,
            String at,
            String material,
            String lot,
            String grams,
            String vessel,
            String balance,
            String by,
            String checked) {}

    /** One line, asked and weighed. */
    public record Made(
            String material, String asked, String weighed, String deviation, String formula, String asMade) {}

    /** One vessel. */
    public record Vessel(String name, String tare, String clean) {}
}
