package stillroom.formulary.dosing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent.Poured;
import stillroom.formulary.batch.BatchEvent.ReadingTaken;
import stillroom.formulary.batch.BatchEvent.TitrationRead;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;

/**
 * What it took to correct the pH of an earlier batch with one acid or base.
 *
 * @param percent of all that came into that batch [%]
 * @param from the last pH before the first addition, where it was read
 * @param to the last pH of the batch after the additions, where it was read
 * @param pours how many additions
 */
public record DosedBefore(
        long batchId,
        String batchCode,
        LocalDate openedOn,
        String materialKey,
        Grams grams,
        Percent percent,
        Optional<Double> from,
        Optional<Double> to,
        int pours) {

    /** One for each acid or base that was poured, in the order of first use; none where the pH was left alone. */
    public static List<DosedBefore> of(Batch batch, List<LogEntry> log) {
        BatchState state = BatchState.of(log);
        Grams whole =
                Grams.sum(state.inputs().stream().map(content -> content.mass()).toList());
        Set<Integer> struck = state.struck();
        List<LogEntry> counting =
                log.stream().filter(entry -> !struck.contains(entry.number())).toList();
        Map<String, List<LogEntry>> pours = new LinkedHashMap<>();
        for (LogEntry entry : counting) {
            if (entry.event() instanceof Poured pour && BulkMoment.corrects(pour.purpose())) {
                pours.computeIfAbsent(pour.materialKey(), key -> new ArrayList<>())
                        .add(entry);
            }
        }
        List<DosedBefore> dosed = new ArrayList<>();
        pours.forEach((key, entries) -> {
            Grams grams = Grams.sum(entries.stream()
                    .map(entry -> ((Poured) entry.event()).mass())
                    .toList());
            if (grams.signum() > 0 && whole.signum() > 0) {
                int first = entries.get(0).number();
                int last = entries.get(entries.size() - 1).number();
                dosed.add(new DosedBefore(
                        batch.id(),
                        batch.code(),
                        batch.openedOn(),
                        key,
                        grams,
                        Percent.share(grams, whole),
                        read(counting, 0, first),
                        read(counting, last, Integer.MAX_VALUE),
                        entries.size()));
            }
        });
        return List.copyOf(dosed);
    }

    /** The last pH of the product itself between two entries. */
    private static Optional<Double> read(List<LogEntry> log, int after, int before) {
        Optional<Double> last = Optional.empty();
        for (LogEntry entry : log) {
            if (entry.number() > after && entry.number() < before) {
                Optional<Double> found = pH(entry);
                last = found.isPresent() ? found : last;
            }
        }
        return last;
    }

    private static Optional<Double> pH(LogEntry entry) {
        if (entry.event() instanceof ReadingTaken reading
                && reading.kind() == ReadingKind.PH
                && reading.how().values().stream()
                        .noneMatch(said -> said.toLowerCase(Locale.ROOT).contains("in water"))) {
            return reading.value();
        }
        return entry.event() instanceof TitrationRead read && read.added().isZero()
                ? Optional.of(read.pH())
                : Optional.empty();
    }
}
