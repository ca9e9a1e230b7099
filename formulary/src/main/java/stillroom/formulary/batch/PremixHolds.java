package stillroom.formulary.batch;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.batch.BatchEvent.Poured;
import stillroom.formulary.hygiene.HoldKind;
import stillroom.formulary.hygiene.HoldLimits;

/** How long premixes stood on the shelf before they were poured. */
public final class PremixHolds {
    private PremixHolds() {}

    /**
     * One for each lot, up to its last pour.
     *
     * @param shelved when each lot of premix was put on the shelf, by its code
     */
    public static List<Hold> of(BatchState state, Map<String, Instant> shelved, HoldLimits limits) {
        Map<String, Hold> holds = new LinkedHashMap<>();
        for (Logged<Poured> pour : state.pours()) {
            Optional<String> lot =
                    pour.event().lot().filter(code -> pour.event().mass().signum() > 0);
            lot.flatMap(code -> Optional.ofNullable(shelved.get(code)))
                    .ifPresent(since -> holds.put(lot.get(), stood(lot.get(), since, pour.at(), limits)));
        }
        return List.copyOf(holds.values());
    }

    /** How long a lot of premix stood until a moment. */
    public static Hold stood(String lot, Instant since, Instant until, HoldLimits limits) {
        return new Hold(
                lot, HoldKind.PREMIX, since, until.isBefore(since) ? since : until, HoldKind.PREMIX.limit(limits));
    }

    /** Notes of the pours of a lot: at the bench, the reason for pouring it all the same. */
    static Optional<String> notes(BatchState state, String lot) {
        List<String> notes = new ArrayList<>();
        state.pours().stream()
                .map(Logged::event)
                .filter(pour -> pour.lot().filter(lot::equals).isPresent()
                        && !pour.note().isBlank())
                .forEach(pour -> notes.add(pour.note()));
        return notes.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", notes));
    }
}
