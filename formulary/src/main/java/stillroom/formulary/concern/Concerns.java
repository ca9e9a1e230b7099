package stillroom.formulary.concern;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the concerns of a batch add up to; struck ones count for nothing.
 *
 * @param stops those still on
 * @param results what ended a stop: entry of the stop, and the words
 * @param explained by name of the deviation, why it is accepted
 * @param counts of the shelf, oldest first
 * @param covered what the log referred to, the newest last
 */
public record Concerns(
        List<Entry<Concern.Stopped>> stops,
        Map<Integer, String> results,
        Map<String, String> explained,
        List<Entry<Concern.Moved>> moves,
        List<Entry<Concern.UnitsCounted>> counts,
        List<Entry<Concern.Complained>> complaints,
        List<Entry<Concern.Reacted>> reactions,
        List<Entry<Concern.SampleKept>> samples,
        List<Entry<Concern.FillChecked>> fillChecks,
        List<Entry<Concern.Attached>> attached,
        List<Entry<Concern.Covered>> covered) {
    public static final Concerns NONE = new ConcernFold().concerns();

    public Concerns {
        stops = List.copyOf(stops);
        results = Map.copyOf(results);
        explained = Map.copyOf(explained);
        moves = List.copyOf(moves);
        counts = List.copyOf(counts);
        complaints = List.copyOf(complaints);
        reactions = List.copyOf(reactions);
        samples = List.copyOf(samples);
        fillChecks = List.copyOf(fillChecks);
        attached = List.copyOf(attached);
        covered = List.copyOf(covered);
    }

    /** The newest stop of a kind that is still on. */
    public Optional<Entry<Concern.Stopped>> stop(Concern.Stop kind) {
        return stops(kind).stream().reduce((earlier, later) -> later);
    }

    /** The stops of a kind that are still on. */
    public List<Entry<Concern.Stopped>> stops(Concern.Stop kind) {
        return stops.stream().filter(one -> one.concern().stop() == kind).toList();
    }
}
