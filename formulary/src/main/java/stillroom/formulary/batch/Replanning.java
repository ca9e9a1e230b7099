package stillroom.formulary.batch;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import stillroom.formulary.batch.BatchEvent.Replanned;
import stillroom.formulary.batch.BatchEvent.Surplus;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Grams;

/** The plan after a way out of an over-pour was taken: what is in stays, what is still to come follows. */
public final class Replanning {
    private final Plan plan;
    private final BatchState state;

    public Replanning(Plan plan, BatchState state) {
        this.plan = plan;
        this.state = state;
    }

    /** Every line becomes what is in plus what the way adds; the batch grows accordingly. */
    public Replanned larger(Mend.LargerBatch way, String reason) {
        Map<String, Grams> more = byLine(way.additions());
        Set<String> all = plan.lines().stream().map(PlannedLine::lineId).collect(Collectors.toSet());
        Plan larger = with(all, more);
        return new Replanned(
                new Plan(larger.batch(), "made larger after an over-pour", larger.lines(), List.of(), plan.residue()),
                reason,
                List.of());
    }

    /** One phase becomes larger than the batch needs; what is too much of it is thrown away before it goes on. */
    public Replanned scaled(Mend.ScalePhase way, String phaseId, String reason) {
        Map<String, Grams> more = byLine(way.additions());
        Set<String> partners = plan.lines().stream()
                .filter(line -> line.phaseId().equals(phaseId) && !line.toReading())
                .map(PlannedLine::lineId)
                .collect(Collectors.toSet());
        Plan scaled = with(partners, more);
        return new Replanned(
                new Plan(
                        scaled.batch(),
                        "one phase made larger after an over-pour, its surplus thrown away",
                        scaled.lines(),
                        List.of(),
                        plan.residue()),
                reason,
                List.of(new Surplus(phaseId, way.discard())));
    }

    private static Map<String, Grams> byLine(List<Addition> additions) {
        Map<String, Grams> more = new HashMap<>();
        additions.forEach(addition -> more.put(addition.lineId(), addition.mass()));
        return more;
    }

    private Plan with(Set<String> changed, Map<String, Grams> more) {
        List<PlannedLine> lines = new ArrayList<>();
        for (PlannedLine line : plan.lines()) {
            boolean follows = changed.contains(line.lineId());
            Grams target = state.poured(line.lineId()).plus(more.getOrDefault(line.lineId(), Grams.ZERO));
            lines.add(follows ? line.withTarget(target, tolerance(line, target)) : line);
        }
        Grams batch = Grams.sum(lines.stream().map(PlannedLine::target).toList());
        return new Plan(batch, plan.reckoning(), lines, plan.shortages(), plan.residue());
    }

    /** Grows with its line, in whole units of the last digit that it had, never below what it was. */
    private static Grams tolerance(PlannedLine line, Grams target) {
        if (line.target().isZero()) {
            return line.tolerance();
        }
        BigDecimal before = line.tolerance().value();
        BigDecimal grown = before.multiply(target.value())
                .divide(line.target().value(), MathContext.DECIMAL64)
                .setScale(Math.max(0, before.scale()), RoundingMode.FLOOR);
        return new Grams(grown.max(before));
    }
}
