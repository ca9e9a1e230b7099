package stillroom.formulary.batch;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.batch.BatchEvent.LotPart;
import stillroom.formulary.batch.BatchEvent.LotsNamed;
import stillroom.formulary.batch.BatchEvent.Poured;

/**
 * Lots that were named after the weighing; the last word counts.
 *
 * @param byPour by number of the weighing, from which lots it came
 * @param replaced weighings and namings whose own word about lots does not count any more
 */
public record NamedLots(Map<Integer, List<LotPart>> byPour, Set<Integer> replaced) {
    public NamedLots {
        byPour = Map.copyOf(byPour);
        replaced = Set.copyOf(replaced);
    }

    static NamedLots of(List<LogEntry> log, Set<Integer> struck) {
        Map<Integer, Integer> last = new LinkedHashMap<>();
        Map<Integer, List<LotPart>> byPour = new LinkedHashMap<>();
        Set<Integer> replaced = new HashSet<>();
        for (LogEntry entry : log) {
            if (entry.event() instanceof LotsNamed named && !struck.contains(entry.number())) {
                Optional.ofNullable(last.put(named.entry(), entry.number())).ifPresent(replaced::add);
                byPour.put(named.entry(), named.parts());
                replaced.add(struck.contains(named.entry()) ? entry.number() : named.entry());
            }
        }
        return new NamedLots(byPour, replaced);
    }

    /** Where a weighing came from, one lot each; the lot that it was entered with where nothing else was said. */
    public List<LotPart> of(int entry) {
        return byPour.getOrDefault(entry, List.of());
    }

    /** What a weighing put in, a content for each lot. */
    List<Content> contents(int entry, Poured pour) {
        List<LotPart> parts = of(entry);
        if (parts.isEmpty()) {
            return List.of(
                    new Content(entry, pour.lineId(), pour.materialKey(), pour.lot(), pour.purpose(), pour.mass()));
        }
        return parts.stream()
                .map(part -> new Content(
                        entry, pour.lineId(), pour.materialKey(), Optional.of(part.lot()), pour.purpose(), part.mass()))
                .toList();
    }

    /** The weighing with the lot that was in hand at its end. */
    Poured lastLot(int entry, Poured pour) {
        List<LotPart> parts = of(entry);
        return parts.isEmpty()
                ? pour
                : new Poured(
                        pour.vessel(),
                        pour.lineId(),
                        pour.materialKey(),
                        Optional.of(parts.get(parts.size() - 1).lot()),
                        pour.mass(),
                        pour.purpose(),
                        pour.balance(),
                        pour.checkedBy(),
                        pour.note(),
                        pour.scanned());
    }
}
