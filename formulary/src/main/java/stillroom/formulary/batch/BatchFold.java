package stillroom.formulary.batch;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.concern.ConcernFold;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.quantity.Grams;

/** Adds up a log. Takes every log as it is: what should not have happened is for {@link BatchRules} to say beforehand. */
final class BatchFold implements BatchEventCases<BatchFold> {
    private final Set<Integer> struck;
    private final NamedLots named;
    private final Map<String, Vessel> vessels = new LinkedHashMap<>();
    private final List<Content> inputs = new ArrayList<>();
    private final List<Logged<BatchEvent.Poured>> pours = new ArrayList<>();
    private final Map<Integer, Double> pourCelsius = new LinkedHashMap<>();
    private final List<Logged<BatchEvent.ReadAgain>> readAgain = new ArrayList<>();
    private final Map<String, String> accepted = new LinkedHashMap<>();
    private final List<Logged<BatchEvent.StepDone>> steps = new ArrayList<>();
    private final Map<String, Logged<BatchEvent.TimerStarted>> timers = new LinkedHashMap<>();
    private final List<Logged<BatchEvent.ReadingTaken>> readings = new ArrayList<>();
    private final List<Logged<BatchEvent.TitrationBegun>> titrations = new ArrayList<>();
    private final List<Logged<BatchEvent.TitrationRead>> titrationReads = new ArrayList<>();
    private final List<WeighedBack> weighings = new ArrayList<>();
    private final List<Drawn> drawn = new ArrayList<>();
    private final List<Logged<BatchEvent.Filled>> fills = new ArrayList<>();
    private final ConcernFold concerns = new ConcernFold();
    private Optional<Plan> plan = Optional.empty();
    private List<BatchEvent.Surplus> surplus = List.of();
    private Optional<Logged<BatchEvent.RestBegun>> rest = Optional.empty();
    private Optional<Logged<BatchEvent.Decided>> decision = Optional.empty();
    private boolean begun;
    private boolean rested;
    private LogEntry entry = new LogEntry(0, Instant.EPOCH, "", new BatchEvent.Noted(""));

    private BatchFold(Set<Integer> struck, NamedLots named) {
        this.struck = struck;
        this.named = named;
    }

    static BatchState of(List<LogEntry> log) {
        Set<Integer> struck = struck(log);
        BatchFold fold = new BatchFold(struck, NamedLots.of(log, struck));
        for (LogEntry entry : log) {
            if (!fold.struck.contains(entry.number())) {
                fold.entry = entry;
                if (isWork(entry.event())) {
                    fold.concerns.worked();
                }
                entry.event().match(fold);
            }
        }
        return fold.state(log.isEmpty() ? 0 : log.get(log.size() - 1).number());
    }

    private static boolean isWork(BatchEvent event) {
        return event instanceof BatchEvent.Poured
                || event instanceof BatchEvent.StepDone
                || event instanceof BatchEvent.Combined
                || event instanceof BatchEvent.Filled;
    }

    /** From the newest back, so that a striking that is itself struck strikes nothing. */
    private static Set<Integer> struck(List<LogEntry> log) {
        Set<Integer> struck = new HashSet<>();
        for (int i = log.size() - 1; i >= 0; i--) {
            LogEntry entry = log.get(i);
            if (entry.event() instanceof BatchEvent.Struck one
                    && one.entry() < entry.number()
                    && !struck.contains(entry.number())) {
                struck.add(one.entry());
            }
        }
        return struck;
    }

    private BatchState state(int lastEntry) {
        return new BatchState(
                lastEntry,
                struck,
                named,
                stage(),
                plan,
                surplus,
                List.copyOf(vessels.values()),
                inputs,
                pours,
                pourCelsius,
                readAgain,
                accepted,
                steps,
                List.copyOf(timers.values()),
                readings,
                titrations,
                titrationReads,
                weighings,
                drawn,
                fills,
                rest,
                rested,
                decision,
                concerns.concerns());
    }

    private BatchStage stage() {
        return BatchStage.of(worked(), decision.map(one -> one.event().decision()), concerns.concerns());
    }

    /** Where the work stands, whatever stops it. */
    private BatchStage worked() {
        if (!fills.isEmpty()) {
            return BatchStage.FILLED;
        }
        if (rest.isPresent()) {
            return BatchStage.RESTING;
        }
        return begun ? BatchStage.IN_WORK : BatchStage.PLANNED;
    }

    private <E extends BatchEvent> Logged<E> logged(E event) {
        return new Logged<>(entry.number(), entry.at(), entry.by(), event);
    }

    private Vessel vessel(String name) {
        return vessels.computeIfAbsent(name, Vessel::named);
    }

    private void put(Vessel vessel) {
        vessels.put(vessel.name(), vessel);
    }

    /** Work and readings on the batch as a whole name no vessel. */
    private void seen(String vesselName, Optional<Double> celsius) {
        if (!vesselName.isBlank()) {
            put(vessel(vesselName).at(celsius));
        }
    }

    private void comesIn(String vesselName, Content content) {
        inputs.add(content);
        Vessel vessel = vessel(vesselName);
        put(vessel.with(vessel.mixture().plus(content)));
    }

    private void draw(Drawn.Kind kind, String vesselName, String what, Grams mass) {
        Vessel vessel = vessel(vesselName);
        Mixture.Split split = vessel.mixture().split(mass);
        put(vessel.with(split.left()));
        drawn.add(new Drawn(entry.number(), kind, vesselName, what, mass, split.taken()));
    }

    @Override
    public BatchFold planned(BatchEvent.Planned event) {
        plan = Optional.of(event.plan());
        return this;
    }

    @Override
    public BatchFold begun(BatchEvent.Begun event) {
        begun = true;
        return this;
    }

    @Override
    public BatchFold vesselReady(BatchEvent.VesselReady event) {
        begun = true;
        put(Vessel.ready(event, vessel(event.vessel()).mixture()));
        return this;
    }

    @Override
    public BatchFold poured(BatchEvent.Poured event) {
        begun = true;
        BatchEvent.Poured pour = ServedLine.of(event, plan);
        pours.add(logged(named.lastLot(entry.number(), pour)));
        vessel(pour.vessel()).celsius().ifPresent(celsius -> pourCelsius.put(entry.number(), celsius));
        named.contents(entry.number(), pour).forEach(content -> comesIn(pour.vessel(), content));
        return this;
    }

    @Override
    public BatchFold replanned(BatchEvent.Replanned event) {
        plan = Optional.of(event.plan());
        surplus = event.surplus();
        return this;
    }

    /** Counted where the weighing itself is. */
    @Override
    public BatchFold lotsNamed(BatchEvent.LotsNamed event) {
        return this;
    }

    @Override
    public BatchFold phasesGiven(BatchEvent.PhasesGiven event) {
        put(vessel(event.vessel()).serving(event.phases()));
        return this;
    }

    @Override
    public BatchFold readAgain(BatchEvent.ReadAgain event) {
        readAgain.add(logged(event));
        return this;
    }

    @Override
    public BatchFold lineAccepted(BatchEvent.LineAccepted event) {
        accepted.put(event.lineId(), event.reason());
        return this;
    }

    @Override
    public BatchFold stepDone(BatchEvent.StepDone event) {
        begun = true;
        steps.add(logged(event));
        seen(event.vessel(), event.celsius());
        timers.values().removeIf(timer -> endsWith(timer.event(), event));
        return this;
    }

    /** A timer ends with its step, and one that has run out with any step in its vessel. */
    private boolean endsWith(BatchEvent.TimerStarted timer, BatchEvent.StepDone step) {
        return timer.vessel().equals(step.vessel())
                && (timer.label().equals(step.doing()) || !timer.until().isAfter(entry.at()));
    }

    private void stopTimersOf(String vesselName) {
        timers.values().removeIf(timer -> timer.event().vessel().equals(vesselName));
    }

    @Override
    public BatchFold timerStarted(BatchEvent.TimerStarted event) {
        timers.put(event.timer(), logged(event));
        return this;
    }

    @Override
    public BatchFold timerStopped(BatchEvent.TimerStopped event) {
        timers.remove(event.timer());
        return this;
    }

    @Override
    public BatchFold combined(BatchEvent.Combined event) {
        if (event.from().equals(event.into())) {
            return this;
        }
        Vessel from = vessel(event.from()).at(event.fromCelsius());
        Vessel into = vessel(event.into()).at(event.intoCelsius());
        put(into.with(into.mixture().plus(from.mixture())));
        put(from.emptiedInto(event.into()));
        stopTimersOf(event.from());
        return this;
    }

    /** More than the book expects is kept as a finding; it adds nothing, since nobody knows what it would be. */
    @Override
    public BatchFold vesselWeighed(BatchEvent.VesselWeighed event) {
        Vessel vessel = vessel(event.vessel());
        WeighedBack back = new WeighedBack(entry.number(), event.vessel(), event.gross(), vessel.expectedGross());
        weighings.add(back);
        back.missing()
                .filter(missing -> missing.signum() > 0)
                .ifPresent(missing -> put(vessel.with(vessel.mixture().less(missing))));
        return this;
    }

    @Override
    public BatchFold sampled(BatchEvent.Sampled event) {
        draw(Drawn.Kind.SAMPLE, event.vessel(), event.what(), event.mass());
        return this;
    }

    @Override
    public BatchFold readingTaken(BatchEvent.ReadingTaken event) {
        readings.add(logged(event));
        if (event.kind() == ReadingKind.TEMPERATURE) {
            seen(event.vessel(), event.value());
        }
        return this;
    }

    @Override
    public BatchFold titrationBegun(BatchEvent.TitrationBegun event) {
        titrations.add(logged(event));
        draw(Drawn.Kind.SAMPLE, event.vessel(), "pH titration", event.sample());
        return this;
    }

    @Override
    public BatchFold titrationRead(BatchEvent.TitrationRead event) {
        titrationReads.add(logged(event));
        return this;
    }

    @Override
    public BatchFold restBegun(BatchEvent.RestBegun event) {
        rest = Optional.of(logged(event));
        rested = true;
        return this;
    }

    @Override
    public BatchFold restEnded(BatchEvent.RestEnded event) {
        rest = Optional.empty();
        return this;
    }

    @Override
    public BatchFold filled(BatchEvent.Filled event) {
        fills.add(logged(event));
        draw(Drawn.Kind.FILL, event.vessel(), event.containers() + " × " + event.pack(), event.total());
        event.retained().ifPresent(mass -> draw(Drawn.Kind.RETAINED, event.vessel(), "retained", mass));
        if (vessel(event.vessel()).mixture().net().signum() <= 0) {
            stopTimersOf(event.vessel());
        }
        return this;
    }

    @Override
    public BatchFold handedOver(BatchEvent.HandedOver event) {
        draw(Drawn.Kind.HANDED_OVER, event.vessel(), event.toBatch(), event.mass());
        return this;
    }

    @Override
    public BatchFold bulkReceived(BatchEvent.BulkReceived event) {
        begun = true;
        for (BatchEvent.BulkPart part : event.parts()) {
            comesIn(
                    event.vessel(),
                    new Content(
                            entry.number(), part.lineId(), part.materialKey(), part.lot(), Purpose.LINE, part.mass()));
        }
        Vessel vessel = vessel(event.vessel());
        put(vessel.with(vessel.mixture().less(event.waterLost())));
        return this;
    }

    @Override
    public BatchFold pictured(BatchEvent.Pictured event) {
        return this;
    }

    @Override
    public BatchFold noted(BatchEvent.Noted event) {
        return this;
    }

    @Override
    public BatchFold struck(BatchEvent.Struck event) {
        return this;
    }

    @Override
    public BatchFold decided(BatchEvent.Decided event) {
        decision = Optional.of(logged(event));
        timers.clear();
        return this;
    }

    @Override
    public BatchFold concerned(BatchEvent.Concerned event) {
        concerns.take(entry.number(), entry.at(), entry.by(), event.concern());
        return this;
    }
}
