package stillroom.formulary.batch;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.batch.BatchEvent.Decided;
import stillroom.formulary.batch.BatchEvent.Filled;
import stillroom.formulary.batch.BatchEvent.Poured;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.batch.BatchEvent.ReadAgain;
import stillroom.formulary.batch.BatchEvent.ReadingTaken;
import stillroom.formulary.batch.BatchEvent.RestBegun;
import stillroom.formulary.batch.BatchEvent.StepDone;
import stillroom.formulary.batch.BatchEvent.TimerStarted;
import stillroom.formulary.batch.BatchEvent.TitrationBegun;
import stillroom.formulary.batch.BatchEvent.TitrationRead;
import stillroom.formulary.concern.Concerns;
import stillroom.formulary.concern.Units;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.quantity.Grams;

/**
 * What a batch log adds up to. Struck entries count for nothing; a struck striking restores.
 *
 * @param lastEntry number of the newest entry, 0 for an empty log
 * @param struck numbers of the entries that do not count
 * @param named lots that were said after the weighing
 * @param surplus what of which phase is to be thrown away
 * @param vessels in the order in which they came up
 * @param inputs all that ever came in, as added
 * @param pourCelsius by number of a weighing, how warm its vessel was last seen before it [degrees Celsius]
 * @param readAgain second looks at a weight, in order
 * @param accepted by line id, why a line stays as it is
 * @param timers those still running or run out, not stopped; a timer ends with its step, its vessel and the batch
 * @param titrations samples that were titrated, with their readings in {@code titrationReads}
 * @param rest the rest that is still on
 * @param rested whether a rest was ever begun
 * @param decision the latest
 * @param concerns what concerns the batch as a whole
 */
public record BatchState(
        int lastEntry,
        Set<Integer> struck,
        NamedLots named,
        BatchStage stage,
        Optional<Plan> plan,
        List<BatchEvent.Surplus> surplus,
        List<Vessel> vessels,
        List<Content> inputs,
        List<Logged<Poured>> pours,
        Map<Integer, Double> pourCelsius,
        List<Logged<ReadAgain>> readAgain,
        Map<String, String> accepted,
        List<Logged<StepDone>> steps,
        List<Logged<TimerStarted>> timers,
        List<Logged<ReadingTaken>> readings,
        List<Logged<TitrationBegun>> titrations,
        List<Logged<TitrationRead>> titrationReads,
        List<WeighedBack> weighings,
        List<Drawn> drawn,
        List<Logged<Filled>> fills,
        Optional<Logged<RestBegun>> rest,
        boolean rested,
        Optional<Logged<Decided>> decision,
        Concerns concerns) {
    public BatchState {
        struck = Set.copyOf(struck);
        surplus = List.copyOf(surplus);
        vessels = List.copyOf(vessels);
        inputs = List.copyOf(inputs);
        pours = List.copyOf(pours);
        pourCelsius = Map.copyOf(pourCelsius);
        readAgain = List.copyOf(readAgain);
        accepted = Map.copyOf(accepted);
        steps = List.copyOf(steps);
        timers = List.copyOf(timers);
        readings = List.copyOf(readings);
        titrations = List.copyOf(titrations);
        titrationReads = List.copyOf(titrationReads);
        weighings = List.copyOf(weighings);
        drawn = List.copyOf(drawn);
        fills = List.copyOf(fills);
    }

    /** The state after a whole log, oldest entry first. */
    public static BatchState of(List<LogEntry> log) {
        return BatchFold.of(log);
    }

    public Optional<Vessel> vessel(String name) {
        return vessels.stream().filter(vessel -> vessel.name().equals(name)).findFirst();
    }

    /** Vessels that were not emptied into another. */
    public List<Vessel> openVessels() {
        return vessels.stream().filter(Vessel::open).toList();
    }

    /** What was put in for a line so far, over all pours, lots and vessels, less what was taken back [g]. */
    public Grams poured(String lineId) {
        return Grams.sum(inputs.stream()
                .filter(content -> content.lineId().filter(lineId::equals).isPresent())
                .map(Content::mass)
                .toList());
    }

    /** Entries that no lot is charged with: struck ones, and those whose lots were said anew. */
    public Set<Integer> unbooked() {
        Set<Integer> unbooked = new java.util.HashSet<>(struck);
        unbooked.addAll(named.replaced());
        return unbooked;
    }

    /** Surplus that is not yet thrown away. */
    public List<BatchEvent.Surplus> surplusOpen() {
        return surplus.stream()
                .filter(one -> drawn.stream().noneMatch(out -> out.what().equals(one.what())))
                .toList();
    }

    /** How far the weight of a pour was looked at twice. */
    public PourCheck check(Logged<Poured> pour) {
        return PourCheck.of(pour, readAgain);
    }

    /** Containers filled so far. */
    public int filled() {
        return fills.stream().mapToInt(fill -> fill.event().containers()).sum();
    }

    /** Where the filled units are. */
    public Units units() {
        return Units.of(filled(), concerns);
    }

    /** Whether it was decided so, at last. */
    public boolean isDecided(BatchEvent.Decision wanted) {
        return decision.filter(one -> one.event().decision() == wanted).isPresent();
    }

    /** The pours that corrected a reading, in order. */
    public List<Logged<Poured>> corrections() {
        return pours.stream()
                .filter(pour ->
                        pour.event().purpose() != Purpose.LINE && pour.event().purpose() != Purpose.MISTAKE)
                .toList();
    }

    /** Readings of one kind, in order. */
    public List<Logged<ReadingTaken>> readings(ReadingKind kind) {
        return readings.stream()
                .filter(reading -> reading.event().kind() == kind)
                .toList();
    }

    /** What stands in all vessels together. */
    public Mixture inVessels() {
        return vessels.stream().map(Vessel::mixture).reduce(Mixture.NONE, Mixture::plus);
    }

    /** All that is or was product: in vessels, filled and retained. */
    public Mixture product() {
        return drawn.stream()
                .filter(one -> one.kind().isProduct())
                .map(Drawn::mixture)
                .reduce(inVessels(), Mixture::plus);
    }

    /** Everything wherever it went: the same contents that came in. */
    public Mixture everywhere() {
        return drawn.stream().map(Drawn::mixture).reduce(inVessels(), Mixture::plus);
    }
}
