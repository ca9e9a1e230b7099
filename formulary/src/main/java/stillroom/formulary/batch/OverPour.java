package stillroom.formulary.batch;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.LotStock;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;
import stillroom.science.weighing.Steps;

/**
 * What to do about a line of which too much was poured, by the stage of the work.
 *
 * @param limited ids of lines that a law or a preservative's minimum limits: those are never simply left
 */
public record OverPour(
        Plan plan,
        Formula formula,
        BatchState state,
        List<Balance> balances,
        List<LotStock> shelf,
        Set<String> limited) {
    /** So little too much of something unlimited is left. Common practice, no source. */
    private static final BigDecimal HARMLESS_PERCENT = BigDecimal.valueOf(2);

    /** So far over its target, a line was rather typed than poured wrongly. Common practice, no source. */
    private static final BigDecimal DOUBTFUL_PERCENT = BigDecimal.valueOf(50);

    public OverPour {
        balances = List.copyOf(balances);
        shelf = List.copyOf(shelf);
        limited = Set.copyOf(limited);
    }

    /** How far the work has gone with what was poured too much. */
    enum Stage {
        ON_TOP,
        IN_ITS_PHASE,
        COMBINED
    }

    /** The ways out, the mildest first, before them the doubt of the figure; none where the line is not over its target. */
    public List<Mend> ways(String lineId) {
        Optional<PlannedLine> found = plan.line(lineId);
        if (found.isEmpty() || over(found.get()).signum() <= 0) {
            return List.of();
        }
        PlannedLine line = found.get();
        List<Mend> ways = new ArrayList<>();
        doubtful(line).ifPresent(ways::add);
        leave(line).ifPresent(ways::add);
        Stage stage = stage(line);
        if (stage == Stage.ON_TOP) {
            ways.add(new Mend.TakeBack(over(line)));
        }
        if (stage != Stage.COMBINED && partners(line).size() > 1) {
            ways.add(scaledPhase(line));
        }
        ways.add(new LargerBatchSearch(this).found());
        if (stage == Stage.COMBINED) {
            second(line).ifPresent(ways::add);
        }
        ways.add(new Mend.Accept(share(line)));
        ways.add(new Mend.Discard(state.inVessels().net()));
        return ways;
    }

    private Grams over(PlannedLine line) {
        return state.poured(line.lineId()).minus(line.target());
    }

    private BigDecimal overPercent(PlannedLine line) {
        return over(line).value().movePointRight(2).divide(line.target().value(), MathContext.DECIMAL32);
    }

    /** Its largest pour, where without it the line would not be over. */
    private Optional<Mend> doubtful(PlannedLine line) {
        if (line.target().isZero() || overPercent(line).compareTo(DOUBTFUL_PERCENT) <= 0) {
            return Optional.empty();
        }
        return state.pours().stream()
                .filter(pour ->
                        pour.event().lineId().filter(line.lineId()::equals).isPresent())
                .max(Comparator.comparing(
                                (Logged<BatchEvent.Poured> pour) -> pour.event().mass())
                        .thenComparing(Logged::number))
                .filter(pour -> pour.event().mass().compareTo(over(line)) >= 0)
                .map(pour -> new Mend.Strike(pour.number(), pour.event().mass()));
    }

    private Optional<Mend> leave(PlannedLine line) {
        Grams over = over(line);
        if (over.compareTo(line.tolerance()) <= 0) {
            return Optional.of(new Mend.Leave("It is within the tolerance of " + line.tolerance() + " g."));
        }
        BigDecimal percent = overPercent(line);
        return !limited.contains(line.lineId()) && percent.compareTo(HARMLESS_PERCENT) <= 0
                ? Optional.of(new Mend.Leave("It is 2 % of the line or less, and nothing limits the line."))
                : Optional.empty();
    }

    Stage stage(PlannedLine line) {
        Optional<Logged<BatchEvent.Poured>> last = state.pours().stream()
                .filter(pour ->
                        pour.event().lineId().filter(line.lineId()::equals).isPresent())
                .reduce((earlier, later) -> later);
        if (last.isEmpty()) {
            return Stage.IN_ITS_PHASE;
        }
        String vessel = last.get().event().vessel();
        boolean combined = state.vessels().stream()
                .anyMatch(one -> one.combinedInto()
                        .filter(into -> one.name().equals(vessel) || into.equals(vessel))
                        .isPresent());
        if (combined) {
            return Stage.COMBINED;
        }
        return touchedSince(last.get().number(), vessel) ? Stage.IN_ITS_PHASE : Stage.ON_TOP;
    }

    private boolean touchedSince(int entry, String vessel) {
        return state.pours().stream()
                        .anyMatch(p -> p.number() > entry && p.event().vessel().equals(vessel))
                || state.steps().stream()
                        .anyMatch(s -> s.number() > entry && s.event().vessel().equals(vessel));
    }

    private List<PlannedLine> partners(PlannedLine line) {
        return plan.lines().stream()
                .filter(other -> other.phaseId().equals(line.phaseId()) && !other.toReading())
                .toList();
    }

    private Mend scaledPhase(PlannedLine line) {
        BigDecimal factor =
                state.poured(line.lineId()).value().divide(line.target().value(), MathContext.DECIMAL64);
        List<Addition> additions = new ArrayList<>();
        Grams scaled = Grams.ZERO;
        for (PlannedLine other : partners(line)) {
            Grams poured = state.poured(other.lineId());
            BigDecimal wanted = Steps.nearest(
                    other.target().value().multiply(factor), step(other).value());
            Grams missing = new Grams(wanted).minus(poured);
            if (!other.lineId().equals(line.lineId()) && missing.signum() > 0) {
                additions.add(new Addition(other.lineId(), other.materialKey(), missing));
                poured = poured.plus(missing);
            }
            scaled = scaled.plus(poured);
        }
        Grams use = Grams.sum(partners(line).stream().map(PlannedLine::target).toList());
        return new Mend.ScalePhase(factor.setScale(4, RoundingMode.HALF_EVEN), additions, use, scaled.minus(use));
    }

    /** As large as this one, or as it must be to hold so much of the line at all. */
    private Optional<Mend> second(PlannedLine line) {
        if (line.toReading() || line.target().isZero()) {
            return Optional.empty();
        }
        Grams over = over(line);
        BigDecimal least =
                over.value().multiply(plan.batch().value()).divide(line.target().value(), MathContext.DECIMAL64);
        Grams whole = new Grams(
                Steps.notBelow(least, step(line).value()).max(plan.batch().value()));
        return Optional.of(new Mend.SecondBatch(whole.minus(over), over));
    }

    /** Its share once all other lines are in as planned, what is over beyond the batch [%]. */
    private Percent share(PlannedLine line) {
        Grams whole = Grams.ZERO;
        for (PlannedLine one : plan.lines()) {
            Grams poured = state.poured(one.lineId());
            whole = whole.plus(poured.compareTo(one.target()) > 0 ? poured : one.target());
        }
        return Percent.share(state.poured(line.lineId()), whole);
    }

    Grams step(PlannedLine line) {
        return balance(line)
                .map(Balance::step)
                .orElseThrow(() -> new IllegalArgumentException("no balance is called " + line.balance()));
    }

    Optional<Balance> balance(PlannedLine line) {
        return balances.stream()
                .filter(balance -> balance.name().equals(line.balance()))
                .findFirst();
    }
}
