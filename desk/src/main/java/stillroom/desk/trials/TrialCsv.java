package stillroom.desk.trials;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Transfer;
import stillroom.formulary.trial.TrialSet;

/** The runs of a set as a table to take elsewhere: planned and weighed, settings and responses, one run a line. */
final class TrialCsv {
    private TrialCsv() {}

    static void handBack(Desk desk, Context request, TrialSet set) {
        String text = text(set, Weighed.of(desk, set));
        Transfer.handBack(request, "trials-" + set.name() + ".csv", text.getBytes(StandardCharsets.UTF_8));
    }

    static String text(TrialSet set, List<Weighed> weighed) {
        StringWriter text = new StringWriter();
        // A byte order mark first: without it spreadsheet programs take UTF-8 for something else.
        text.write('\uFEFF');
        try (CsvWriter table =
                CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            table.writeRecord(safe(heads(set)));
            weighed.stream()
                    .sorted(Comparator.comparingInt(one -> one.run().order()))
                    .forEach(one -> table.writeRecord(safe(cells(set, one))));
        } catch (IOException broken) {
            throw new UncheckedIOException("a text in memory cannot be written", broken);
        }
        return text.toString();
    }

    private static List<String> heads(TrialSet set) {
        List<String> heads = new ArrayList<>(List.of("run", "day", "batch", "as_weighed"));
        set.components().forEach(one -> heads.add(one.name() + " planned %"));
        set.components().forEach(one -> heads.add(one.name() + " fitted %"));
        set.variables().forEach(one -> heads.add(one.name()));
        for (TrialSet.Response one : set.responses()) {
            heads.add(one.unit().isEmpty() ? one.name() : one.name() + " (" + one.unit() + ")");
            if (one.panel()) {
                heads.add(one.name() + " scores");
            }
        }
        heads.add("note");
        return heads;
    }

    private static List<String> cells(TrialSet set, Weighed one) {
        TrialSet.Run run = one.run();
        List<String> cells = new ArrayList<>();
        cells.add(Integer.toString(run.order()));
        cells.add(Integer.toString(run.block()));
        cells.add(one.batch().map(row -> row.batch().code()).orElse(""));
        cells.add(one.asWeighed() ? "yes" : "no");
        run.fractions().forEach(x -> cells.add(percent(set, x)));
        one.fractions().forEach(x -> cells.add(percent(set, x)));
        run.settings().forEach(x -> cells.add(TrialPage.plain(x)));
        for (TrialSet.Response response : set.responses()) {
            Double value = run.measured().get(response.name());
            cells.add(value == null ? "" : TrialPage.plain(value));
            if (response.panel()) {
                cells.add(Scores.typed(run.scores().getOrDefault(response.name(), List.of())));
            }
        }
        cells.add(run.note());
        return cells;
    }

    private static String percent(TrialSet set, double fraction) {
        return BigDecimal.valueOf(fraction * set.share())
                .setScale(4, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** A text that a spreadsheet would take for a formula gets an apostrophe before it; a negative figure stays one. */
    private static List<String> safe(List<String> cells) {
        return cells.stream()
                .map(cell -> cell.matches("(?s)[=+@\\t\\r-].*") && !cell.matches("-[0-9.]+") ? "'" + cell : cell)
                .toList();
    }
}
