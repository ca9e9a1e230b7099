package stillroom.formulary.dosing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchEvent.ReadingTaken;
import stillroom.formulary.batch.BatchEvent.TitrationBegun;
import stillroom.formulary.batch.BatchEvent.TitrationRead;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.batch.Mixture;
import stillroom.formulary.batch.Vessel;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.quantity.Grams;

/** Sorts a log into what counts for the pH of one vessel. */
final class SessionReckoning {
    private final List<LogEntry> log;
    private final String vessel;
    private final int since;

    SessionReckoning(List<LogEntry> all, String vessel) {
        Set<Integer> struck = BatchState.of(all).struck();
        this.log =
                all.stream().filter(entry -> !struck.contains(entry.number())).toList();
        this.vessel = vessel;
        this.since = log.stream()
                .filter(entry -> changesMake(entry.event()))
                .mapToInt(LogEntry::number)
                .max()
                .orElse(0);
    }

    private boolean changesMake(BatchEvent event) {
        if (event instanceof BatchEvent.Poured pour) {
            return pour.vessel().equals(vessel) && !BulkMoment.corrects(pour.purpose());
        }
        if (event instanceof BatchEvent.Combined combined) {
            return combined.into().equals(vessel);
        }
        return event instanceof BatchEvent.BulkReceived bulk && bulk.vessel().equals(vessel);
    }

    PhSession session() {
        Optional<Logged<TitrationBegun>> titration = titration();
        List<SessionReading> readings = new ArrayList<>();
        Map<Integer, SessionReading> samples = new HashMap<>();
        for (int i = 0; i < log.size(); i++) {
            LogEntry entry = log.get(i);
            if (entry.number() <= since) {
                continue;
            }
            if (entry.event() instanceof ReadingTaken reading && isNeatPh(reading)) {
                readings.add(bulk(entry, reading, before(i)));
            } else if (entry.event() instanceof TitrationBegun begun
                    && titration.filter(one -> one.number() == entry.number()).isPresent()) {
                samples.put(entry.number(), sample(entry, begun, before(i)));
            } else if (entry.event() instanceof TitrationRead read && samples.containsKey(read.titration())) {
                readings.add(read(entry, read, samples.get(read.titration())));
            }
        }
        return new PhSession(vessel, since, before(log.size()), steadiest(readings), titration, forgotten());
    }

    /** The newest sample counts; an earlier one told its part when it was taken. */
    private Optional<Logged<TitrationBegun>> titration() {
        return titrations().stream().filter(one -> one.number() > since).reduce((earlier, later) -> later);
    }

    private List<Logged<TitrationBegun>> titrations() {
        return BatchState.of(log).titrations().stream()
                .filter(one -> one.event().vessel().equals(vessel))
                .toList();
    }

    private int forgotten() {
        return (int) titrations().stream().filter(one -> one.number() <= since).count();
    }

    private BulkMoment before(int index) {
        Mixture mixture = BatchState.of(log.subList(0, index))
                .vessel(vessel)
                .map(Vessel::mixture)
                .orElse(Mixture.NONE);
        return BulkMoment.of(mixture, since);
    }

    private boolean isNeatPh(ReadingTaken reading) {
        return reading.kind() == ReadingKind.PH
                && reading.vessel().equals(vessel)
                && reading.value().isPresent()
                && !mentions(reading.how(), "in water");
    }

    private static SessionReading bulk(LogEntry entry, ReadingTaken reading, BulkMoment moment) {
        return new SessionReading(
                entry.number(),
                entry.at(),
                true,
                moment,
                moment.grams(),
                Grams.ZERO,
                reading.value().orElseThrow(),
                mentions(reading.how(), "strip"));
    }

    private static SessionReading sample(LogEntry entry, TitrationBegun begun, BulkMoment moment) {
        return new SessionReading(
                entry.number(),
                entry.at(),
                false,
                moment,
                begun.sample().doubleValue(),
                Grams.ZERO,
                0,
                mentions(begun.how(), "strip"));
    }

    private static SessionReading read(LogEntry entry, TitrationRead read, SessionReading of) {
        return new SessionReading(
                entry.number(), entry.at(), false, of.moment(), of.takenGrams(), read.added(), read.pH(), of.strip());
    }

    private static boolean mentions(Map<String, String> how, String word) {
        return how.values().stream()
                .anyMatch(value -> value.toLowerCase(Locale.ROOT).contains(word));
    }

    /** Of several readings of the bulk at one moment the last one counts: the first were not yet steady. */
    private static List<SessionReading> steadiest(List<SessionReading> readings) {
        List<SessionReading> kept = new ArrayList<>();
        for (SessionReading reading : readings) {
            kept.removeIf(before -> before.ofBulk()
                    && reading.ofBulk()
                    && before.moment().additions().equals(reading.moment().additions()));
            kept.add(reading);
        }
        return kept;
    }
}
