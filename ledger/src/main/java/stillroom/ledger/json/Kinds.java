package stillroom.ledger.json;

import java.util.Map;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.plan.BatchSize;

/** The word in "kind" for each shape of a closed set. Part of the file format: a class may be renamed, its word may not. */
final class Kinds {
    static final Map<Class<?>, String> AMOUNTS = Map.of(
            Amount.Fixed.class, "fixed", Amount.ToHundred.class, "to-hundred", Amount.ToReading.class, "to-reading");

    static final Map<Class<?>, String> BATCH_SIZES =
            Map.of(BatchSize.Stated.class, "stated", BatchSize.FromContainers.class, "from-containers");

    static final Map<Class<?>, String> EVENTS = Map.ofEntries(
            Map.entry(BatchEvent.Planned.class, "planned"),
            Map.entry(BatchEvent.Begun.class, "begun"),
            Map.entry(BatchEvent.VesselReady.class, "vessel-ready"),
            Map.entry(BatchEvent.Poured.class, "poured"),
            Map.entry(BatchEvent.LineAccepted.class, "line-accepted"),
            Map.entry(BatchEvent.StepDone.class, "step-done"),
            Map.entry(BatchEvent.TimerStarted.class, "timer-started"),
            Map.entry(BatchEvent.TimerStopped.class, "timer-stopped"),
            Map.entry(BatchEvent.Combined.class, "combined"),
            Map.entry(BatchEvent.VesselWeighed.class, "vessel-weighed"),
            Map.entry(BatchEvent.Sampled.class, "sampled"),
            Map.entry(BatchEvent.ReadingTaken.class, "reading-taken"),
            Map.entry(BatchEvent.RestBegun.class, "rest-begun"),
            Map.entry(BatchEvent.RestEnded.class, "rest-ended"),
            Map.entry(BatchEvent.Filled.class, "filled"),
            Map.entry(BatchEvent.HandedOver.class, "handed-over"),
            Map.entry(BatchEvent.BulkReceived.class, "bulk-received"),
            Map.entry(BatchEvent.Noted.class, "noted"),
            Map.entry(BatchEvent.Struck.class, "struck"),
            Map.entry(BatchEvent.Decided.class, "decided"));

    /** The closed sets that are told apart by a kind. */
    static final Map<Class<?>, Map<Class<?>, String>> ALL =
            Map.of(Amount.class, AMOUNTS, BatchSize.class, BATCH_SIZES, BatchEvent.class, EVENTS);

    private Kinds() {}

    static String of(BatchEvent event) {
        String kind = EVENTS.get(event.getClass());
        if (kind == null) {
            throw new IllegalArgumentException("no kind is written down for " + event.getClass());
        }
        return kind;
    }
}
