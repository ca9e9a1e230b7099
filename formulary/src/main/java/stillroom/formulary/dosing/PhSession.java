package stillroom.formulary.dosing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.batch.BatchEvent.TitrationBegun;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.batch.Logged;

/**
 * What a log says about the pH of one vessel since its make last changed by anything but acid or base.
 *
 * <p>Water, thickener or another phase poured in changes how the liquid buffers; readings from before then no longer count.
 *
 * @param vessel its name
 * @param since number of the entry that last changed the make; 0 for none
 * @param now what stands in the vessel
 * @param readings those that count, in order: of the bulk, and of the titrated sample
 * @param titration the titration whose readings are among them
 * @param forgotten titrations of this vessel from before the make changed
 */
public record PhSession(
        String vessel,
        int since,
        BulkMoment now,
        List<SessionReading> readings,
        Optional<Logged<TitrationBegun>> titration,
        int forgotten) {
    public PhSession {
        readings = List.copyOf(readings);
    }

    /** From a whole log, oldest entry first. */
    public static PhSession of(List<LogEntry> log, String vessel) {
        return new SessionReckoning(log, vessel).session();
    }

    /** Readings of the bulk itself. */
    public List<SessionReading> ofBulk() {
        return readings.stream().filter(SessionReading::ofBulk).toList();
    }

    /** Readings of the titrated sample. */
    public List<SessionReading> ofSample() {
        return readings.stream().filter(reading -> !reading.ofBulk()).toList();
    }

    /** The pH of the bulk as it stands now, where it was read after the last addition. */
    public Optional<SessionReading> readNow() {
        List<SessionReading> now = new ArrayList<>(readings.stream()
                .filter(reading -> reading.moment().additions().size()
                                == this.now.additions().size()
                        && reading.sampleGrams().isZero()
                        && sameAdditions(reading))
                .toList());
        return now.isEmpty() ? Optional.empty() : Optional.of(now.get(now.size() - 1));
    }

    /** Samples taken meanwhile leave the share of each addition as it was. */
    private boolean sameAdditions(SessionReading reading) {
        double then = reading.moment().added().doubleValue() / reading.moment().grams();
        double today = now.added().doubleValue() / now.grams();
        return Math.abs(then - today) <= 1e-9;
    }
}
