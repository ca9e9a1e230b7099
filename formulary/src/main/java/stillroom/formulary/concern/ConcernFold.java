package stillroom.formulary.concern;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Adds up the concerns of a log, one after another. Not thread-safe. */
public final class ConcernFold implements ConcernCases<Boolean> {
    private final List<Entry<Concern.Stopped>> stops = new ArrayList<>();
    private final Map<Integer, String> results = new LinkedHashMap<>();
    private final Map<String, String> explained = new LinkedHashMap<>();
    private final List<Entry<Concern.Moved>> moves = new ArrayList<>();
    private final List<Entry<Concern.UnitsCounted>> counts = new ArrayList<>();
    private final List<Entry<Concern.Complained>> complaints = new ArrayList<>();
    private final List<Entry<Concern.Reacted>> reactions = new ArrayList<>();
    private final List<Entry<Concern.SampleKept>> samples = new ArrayList<>();
    private final List<Entry<Concern.FillChecked>> fillChecks = new ArrayList<>();
    private final List<Entry<Concern.Attached>> attached = new ArrayList<>();
    private final List<Entry<Concern.Covered>> covered = new ArrayList<>();
    private int number;
    private Instant at = Instant.EPOCH;
    private String by = "";

    /** Takes the next concern of the log. */
    public void take(int entry, Instant when, String who, Concern concern) {
        number = entry;
        at = when;
        by = who;
        concern.match(this);
    }

    /** Work at the bench ends a pause. */
    public void worked() {
        stops.removeIf(one -> one.concern().stop() == Concern.Stop.PAUSE);
    }

    public Concerns concerns() {
        return new Concerns(
                stops,
                results,
                explained,
                moves,
                counts,
                complaints,
                reactions,
                samples,
                fillChecks,
                attached,
                covered);
    }

    private <C extends Concern> Entry<C> entry(C concern) {
        return new Entry<>(number, at, by, concern);
    }

    @Override
    public Boolean stopped(Concern.Stopped concern) {
        return stops.add(entry(concern));
    }

    @Override
    public Boolean goneOn(Concern.GoneOn concern) {
        results.put(concern.entry(), concern.words());
        return stops.removeIf(one -> one.number() == concern.entry());
    }

    @Override
    public Boolean explained(Concern.Explained concern) {
        explained.put(concern.deviation(), concern.reason());
        return true;
    }

    @Override
    public Boolean moved(Concern.Moved concern) {
        return moves.add(entry(concern));
    }

    @Override
    public Boolean unitsCounted(Concern.UnitsCounted concern) {
        return counts.add(entry(concern));
    }

    @Override
    public Boolean complained(Concern.Complained concern) {
        return complaints.add(entry(concern));
    }

    @Override
    public Boolean reacted(Concern.Reacted concern) {
        return reactions.add(entry(concern));
    }

    @Override
    public Boolean sampleKept(Concern.SampleKept concern) {
        return samples.add(entry(concern));
    }

    @Override
    public Boolean fillChecked(Concern.FillChecked concern) {
        return fillChecks.add(entry(concern));
    }

    @Override
    public Boolean attached(Concern.Attached concern) {
        return attached.add(entry(concern));
    }

    @Override
    public Boolean covered(Concern.Covered concern) {
        return covered.add(entry(concern));
    }
}
