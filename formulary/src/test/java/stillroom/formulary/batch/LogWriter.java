package stillroom.formulary.batch;

import static stillroom.formulary.plan.Workbench.g;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.plan.BatchSize;
import stillroom.formulary.plan.Bench;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.plan.Planner;
import stillroom.formulary.plan.Tolerances;
import stillroom.formulary.plan.Workbench;
import stillroom.formulary.quantity.Grams;

/** Writes batch logs for tests, a minute from entry to entry. */
final class LogWriter {
    private static final Instant START = Instant.parse("2026-03-01T09:00:00Z");
    private final List<LogEntry> log = new ArrayList<>();

    static Plan tonerPlan() {
        Bench bench = new Bench(List.of(Workbench.KITCHEN, Workbench.FINE), List.of(), Tolerances.USUAL);
        return new Planner(Workbench.BOOK, bench, Workbench.TODAY)
                .plan(Workbench.toner(), new BatchSize.Stated(g("1000")), Map.of());
    }

    /** A kilogram of toner, planned, with one vessel for both phases. */
    static LogWriter toner() {
        return new LogWriter().add(new BatchEvent.Planned(tonerPlan())).vessel("beaker");
    }

    LogWriter add(BatchEvent event) {
        int number = log.size() + 1;
        log.add(new LogEntry(number, START.plusSeconds(60L * number), "maker", event));
        return this;
    }

    LogWriter vessel(String name, String... phases) {
        return add(new BatchEvent.VesselReady(
                name, Optional.of(g("300")), Optional.empty(), "washed, alcohol", List.of(phases)));
    }

    LogWriter pour(String vessel, String line, String material, String mass) {
        return pour(vessel, line, material, g(mass), Purpose.LINE);
    }

    LogWriter pour(String vessel, String line, String material, Grams mass, Purpose purpose) {
        Optional<String> id = line.isEmpty() ? Optional.empty() : Optional.of(line);
        return add(new BatchEvent.Poured(
                vessel, id, material, Optional.of("lot-" + material), mass, purpose, "bench balance", "", ""));
    }

    LogWriter step(String vessel, String step, double celsius) {
        return add(
                new BatchEvent.StepDone(vessel, Optional.of(step), "done", Optional.of(celsius), Optional.empty(), ""));
    }

    LogWriter ph(double value) {
        return add(new BatchEvent.ReadingTaken(
                ReadingKind.PH, "beaker", Optional.of(value), "", "", Map.of("sample", "neat")));
    }

    LogWriter everyLineAsPlanned(String vessel) {
        for (PlannedLine line : tonerPlan().lines()) {
            pour(vessel, line.lineId(), line.materialKey(), line.target(), Purpose.LINE);
        }
        return this;
    }

    List<LogEntry> log() {
        return List.copyOf(log);
    }

    BatchState state() {
        return BatchState.of(log);
    }
}
