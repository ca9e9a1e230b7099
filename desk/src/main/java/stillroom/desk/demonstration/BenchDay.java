package stillroom.desk.demonstration;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Judgement;
import stillroom.formulary.Problem;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.batch.BatchRules;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.batch.BenchFacts;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.formula.Step;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.BatchSize;
import stillroom.formulary.plan.Bench;
import stillroom.formulary.plan.LotStock;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.plan.Planner;
import stillroom.formulary.plan.Tolerances;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;
import stillroom.ledger.Ledger;
import stillroom.ledger.lot.StockedLot;

/**
 * Works a batch as a person at the bench would, on a clock of its own: planned by the planner, every entry held against
 * the rules of the bench before it is written. Not thread-safe.
 */
final class BenchDay {
    /** How far the hand is off, in steps of the balance, one pour after the other. */
    private static final List<Integer> HAND = List.of(0, 1, 0, -1, 0, 2, -1);

    private final Ledger ledger;
    private final Batch batch;
    private final Formula formula;
    private final BenchFacts facts;
    private final Plan plan;
    private final List<LogEntry> log = new ArrayList<>();
    private Instant now;
    private String by;

    private BenchDay(Desk desk, Batch batch, FormulaVersion version, Grams size, Instant now, String by) {
        this.ledger = desk.ledger();
        this.batch = batch;
        this.formula = version.formula();
        this.now = now;
        this.by = by;
        List<Balance> balances = ledger.equipment().balances();
        List<StockedLot> lots = ledger.lots().all();
        List<LotStock> shelf = lots.stream()
                .filter(lot -> lot.lot().state() != Lot.State.USED_UP)
                .map(lot -> new LotStock(lot.lot(), lot.onHand()))
                .toList();
        MaterialBook book = ledger.materials().book(version.cards());
        this.facts = new BenchFacts(balances, lots.stream().map(StockedLot::lot).toList(), book, batch.openedOn());
        Brief brief =
                ledger.products().product(version.productId()).orElseThrow().brief();
        this.plan = new Planner(book, new Bench(balances, shelf, Tolerances.USUAL), batch.openedOn())
                .plan(formula, new BatchSize.Stated(size), Judgement.limits(desk, Subjects.of(formula, brief), book));
    }

    /** Opens a batch and writes its plan. */
    static BenchDay plan(Desk desk, FormulaVersion version, Grams size, Instant at, String who) {
        Ledger ledger = desk.ledger();
        LocalDate day = LocalDate.ofInstant(at, desk.zone());
        String code = ledger.batches().proposeCode(day);
        Batch batch = ledger.batches()
                .open(version.productId(), Optional.of(version.number()), code, day)
                .orElseThrow();
        BenchDay bench = new BenchDay(desk, batch, version, size, at, who);
        bench.write(new BatchEvent.Planned(bench.plan));
        return bench;
    }

    BenchDay after(Duration passed) {
        now = now.plus(passed);
        return this;
    }

    /** Goes on at a later moment. */
    BenchDay at(Instant moment) {
        if (moment.isBefore(now)) {
            throw new IllegalArgumentException("the log runs forward: " + moment + " is before " + now);
        }
        now = moment;
        return this;
    }

    /** Another person takes over. */
    BenchDay by(String person) {
        by = person;
        return this;
    }

    BenchDay write(BatchEvent event) {
        List<Problem> problems = BatchRules.problems(BatchState.of(log), event, facts);
        if (!problems.isEmpty()) {
            throw new IllegalStateException("the demonstration would write what the bench refuses: " + problems);
        }
        String request = "demonstration-" + batch.code() + "-" + log.size();
        log.add(ledger.batches().append(batch.id(), request, now, by, event));
        now = now.plusSeconds(90);
        return this;
    }

    BenchDay ready(String vessel, String tare, String capacity, String... phases) {
        return write(new BatchEvent.VesselReady(
                vessel,
                Optional.of(Grams.of(tare)),
                Optional.of(Grams.of(capacity)),
                "washed, dried, wiped with 70 % isopropyl alcohol",
                List.of(phases)));
    }

    /** Weighs all lines of a phase whose amount is fixed. */
    BenchDay weighAll(String vessel, String phase) {
        plan.lines().stream()
                .filter(line -> line.phaseId().equals(phase) && !line.toReading())
                .forEach(line -> weigh(vessel, line.lineId()));
        return this;
    }

    /** Weighs one line, lot by lot, the last pour as exact as a hand is. */
    BenchDay weigh(String vessel, String lineId) {
        PlannedLine line = line(lineId);
        List<PlannedLine.LotShare> shares = line.lots();
        for (int i = 0; i < shares.size(); i++) {
            boolean last = i == shares.size() - 1;
            Grams off = last ? handOff(line) : Grams.ZERO;
            Grams mass = shares.get(i).mass().plus(off);
            pour(vessel, line, mass, Purpose.LINE, Optional.of(shares.get(i).lotCode()));
        }
        return this;
    }

    /** Adds some of a line that goes up to a reading. */
    BenchDay correct(String vessel, String lineId, String grams, Purpose purpose) {
        PlannedLine line = line(lineId);
        Optional<String> lot = line.lots().stream().findFirst().map(PlannedLine.LotShare::lotCode);
        pour(vessel, line, Grams.of(grams), purpose, lot);
        return this;
    }

    private void pour(String vessel, PlannedLine line, Grams mass, Purpose purpose, Optional<String> lot) {
        write(new BatchEvent.Poured(
                vessel,
                Optional.of(line.lineId()),
                line.materialKey(),
                lot,
                mass,
                purpose,
                line.balance(),
                log.size() % 2 == 0 ? Saltmarsh.SECOND : "",
                ""));
    }

    private Grams handOff(PlannedLine line) {
        int steps = HAND.get(log.size() % HAND.size());
        Grams off = new Grams(step(line.balance()).multiply(BigDecimal.valueOf(steps)));
        return off.abs().compareTo(line.tolerance()) <= 0 ? off : Grams.ZERO;
    }

    private BigDecimal step(String balance) {
        return facts.balances().stream()
                .filter(known -> known.name().equals(balance))
                .findFirst()
                .map(known -> known.step().value())
                .orElseThrow();
    }

    private PlannedLine line(String lineId) {
        return plan.line(lineId).orElseThrow();
    }

    /** Logs a step of the procedure as written, with the temperature that it asks for. */
    BenchDay step(String vessel, String stepId) {
        Step step = formula.phases().stream()
                .flatMap(phase -> phase.steps().stream())
                .filter(known -> known.id().equals(stepId))
                .findFirst()
                .orElseThrow();
        after(Duration.ofMinutes(step.minutes().orElse(3.0).longValue()));
        return write(new BatchEvent.StepDone(
                vessel, Optional.of(stepId), step.doing(), step.celsius(), step.minutes(), step.seeIt()));
    }

    BenchDay read(ReadingKind kind, String vessel, double value, String unit, Map<String, String> how) {
        return write(new BatchEvent.ReadingTaken(kind, vessel, Optional.of(value), unit, "", how));
    }

    /**
     * Titrates a sample with the corrector of a line, diluted to 5 %.
     *
     * @param curve grams of the dilution so far and the pH with them
     */
    BenchDay titrate(String vessel, String lineId, String sample, List<List<String>> curve) {
        PlannedLine line = line(lineId);
        write(new BatchEvent.TitrationBegun(
                vessel,
                Grams.of(sample),
                line.materialKey(),
                line.lots().stream().findFirst().map(PlannedLine.LotShare::lotCode),
                Percent.of("5"),
                Optional.of(22.0),
                Map.of("electrode", Equipment.METER, "balance", line.balance())));
        int begun = log.get(log.size() - 1).number();
        curve.forEach(read ->
                write(new BatchEvent.TitrationRead(begun, Grams.of(read.get(0)), Double.parseDouble(read.get(1)))));
        return this;
    }

    BenchDay look(String vessel, String words) {
        return write(
                new BatchEvent.ReadingTaken(ReadingKind.APPEARANCE, vessel, Optional.empty(), "", words, Map.of()));
    }

    BenchDay sample(String vessel, String grams, String what) {
        return write(new BatchEvent.Sampled(vessel, Grams.of(grams), what));
    }

    /** Weighs the vessel with all in it, so much having evaporated. */
    BenchDay weighBack(String vessel, String evaporated) {
        Grams gross = BatchState.of(log)
                .vessel(vessel)
                .flatMap(known -> known.expectedGross())
                .orElseThrow()
                .minus(Grams.of(evaporated));
        BigDecimal shown = gross.value().setScale(1, RoundingMode.HALF_EVEN);
        return write(new BatchEvent.VesselWeighed(vessel, new Grams(shown)));
    }
}
