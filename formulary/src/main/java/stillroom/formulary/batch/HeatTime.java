package stillroom.formulary.batch;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillroom.formulary.material.MaterialBook;

/**
 * How long a material stood hotter than its card says it bears, over all steps, reheating included.
 *
 * @param limit highest processing temperature on the card [degrees Celsius]
 * @param minutes above it, as logged with the steps [min]
 * @param hottest that was logged meanwhile [degrees Celsius]
 */
public record HeatTime(String materialKey, double limit, double minutes, double hottest) {

    /** Only steps with a temperature and minutes count; what was logged without them cannot be added up. */
    public static List<HeatTime> of(List<LogEntry> log, Set<Integer> struck, MaterialBook book) {
        Map<String, Set<String>> inside = new LinkedHashMap<>();
        Map<String, HeatTime> times = new LinkedHashMap<>();
        for (LogEntry entry : log) {
            if (struck.contains(entry.number())) {
                continue;
            }
            if (entry.event() instanceof BatchEvent.Poured pour) {
                in(inside, pour.vessel()).add(pour.materialKey());
            } else if (entry.event() instanceof BatchEvent.BulkReceived bulk) {
                bulk.parts().forEach(part -> in(inside, bulk.vessel()).add(part.materialKey()));
            } else if (entry.event() instanceof BatchEvent.Combined combined) {
                in(inside, combined.into()).addAll(in(inside, combined.from()));
            } else if (entry.event() instanceof BatchEvent.StepDone step
                    && step.celsius().isPresent()
                    && step.minutes().isPresent()) {
                for (String key : in(inside, step.vessel())) {
                    book.material(key)
                            .flatMap(card -> card.maxCelsius())
                            .filter(limit -> step.celsius().get() > limit)
                            .ifPresent(limit -> times.merge(
                                    key,
                                    new HeatTime(
                                            key,
                                            limit,
                                            step.minutes().get(),
                                            step.celsius().get()),
                                    HeatTime::and));
                }
            }
        }
        return new ArrayList<>(times.values());
    }

    private static Set<String> in(Map<String, Set<String>> inside, String vessel) {
        return inside.computeIfAbsent(vessel, name -> new HashSet<>());
    }

    private HeatTime and(HeatTime other) {
        return new HeatTime(materialKey, limit, minutes + other.minutes, Math.max(hottest, other.hottest));
    }
}
