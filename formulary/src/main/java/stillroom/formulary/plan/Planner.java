package stillroom.formulary.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.Problem;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.plan.PlannedLine.Advice;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

/** Turns percentages into grams for one batch: rounded to real balances, from real lots, adding up exactly. */
public final class Planner {
    private final MaterialBook book;
    private final Bench bench;
    private final LocalDate today;

    /** @param today the day on which lots are judged expired */
    public Planner(MaterialBook book, Bench bench, LocalDate today) {
        this.book = book;
        this.bench = bench;
        this.today = today;
    }

    /**
     * The plan. Lines of 0 % are left out; the targets add up to the batch exactly.
     *
     * @param allowed by line id, the percentages that a law or a preservative's minimum leaves
     * @throws IllegalArgumentException where {@link PlanProblems} finds any
     */
    public Plan plan(Formula formula, BatchSize size, Map<String, PercentRange> allowed) {
        List<Problem> problems = PlanProblems.of(formula, size);
        if (!problems.isEmpty()) {
            throw new IllegalArgumentException("cannot be planned: " + problems);
        }
        BatchMass mass = BatchMass.of(size, coarsestStep());
        List<LineInHand> lines = inHand(formula, mass.mass(), allowed);
        Targets targets = Targets.of(lines, mass.mass());
        ShelfTaking shelf = new ShelfTaking(bench.shelf(), today);
        List<PlannedLine> planned = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            planned.add(planned(lines, i, targets, shelf));
        }
        return new Plan(mass.mass(), mass.reckoning(), planned, shortages(planned, shelf), targets.residue());
    }

    /**
     * How a line that is too little for its balance can be weighed as a premix; none where it is not too little, is no
     * fixed amount, or no carrier of its phase suffices.
     */
    public Optional<PremixPlan> premix(
            Formula formula, BatchSize size, Map<String, PercentRange> allowed, String lineId) {
        if (!PlanProblems.of(formula, size).isEmpty()) {
            return Optional.empty();
        }
        List<LineInHand> lines =
                inHand(formula, BatchMass.of(size, coarsestStep()).mass(), allowed);
        return lines.stream()
                .filter(line -> line.line().id().equals(lineId))
                .filter(line -> line.line().line().amount() instanceof Amount.Fixed)
                .findFirst()
                .flatMap(line -> premix(lines, line));
    }

    private static Optional<PremixPlan> premix(List<LineInHand> lines, LineInHand line) {
        Grams minimum = line.weighing().minimum(line.tolerance());
        if (line.exact().compareTo(minimum) >= 0) {
            return Optional.empty();
        }
        return carrier(lines, line)
                .filter(carrier -> carrier.line().reading().isEmpty())
                .flatMap(carrier -> Premix.of(line, minimum, carrier)
                        .map(dilution -> new PremixPlan(
                                line.line().line(), carrier.line().line(), dilution)));
    }

    private Grams coarsestStep() {
        return bench.balances().stream()
                .map(Balance::step)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    private List<LineInHand> inHand(Formula formula, Grams batch, Map<String, PercentRange> allowed) {
        List<LineInHand> lines = new ArrayList<>();
        Set<String> begun = new HashSet<>();
        for (ResolvedLine line : ResolvedLine.of(formula)) {
            boolean filledVessel = !begun.add(line.phase().id());
            lines.add(inHand(line, batch, filledVessel, Optional.ofNullable(allowed.get(line.id()))));
        }
        return lines;
    }

    private LineInHand inHand(ResolvedLine line, Grams batch, boolean filledVessel, Optional<PercentRange> allowed) {
        Optional<Material> card = book.material(line.materialKey());
        Grams exact = line.percent().of(batch);
        Percent tolerance = bench.tolerances().of(line, card);
        Weighing weighing = Weighing.serving(bench.balances(), exact, tolerance, filledVessel);
        return new LineInHand(line, card, batch, exact, tolerance, weighing, allowed);
    }

    private PlannedLine planned(List<LineInHand> lines, int index, Targets targets, ShelfTaking shelf) {
        LineInHand line = lines.get(index);
        ResolvedLine resolved = line.line();
        Grams target = targets.grams().get(index);
        LotPick pick = shelf.take(resolved.materialKey(), target);
        List<Advice> advice =
                new ArrayList<>(LimitAdvice.of(line, target, targets.conflict().contains(resolved.id())));
        advice.addAll(WeightAdvice.of(line, target, carrier(lines, line)));
        advice.addAll(waterWithoutLot(line) ? List.of(noWaterLot()) : pick.advice());
        return new PlannedLine(
                resolved.id(),
                resolved.phase().id(),
                resolved.materialKey(),
                resolved.percent(),
                target,
                line.toleranceAt(target),
                resolved.reading().isPresent(),
                line.weighing().balance().name(),
                pick.lots(),
                advice);
    }

    /** What a premix of this line can be made in: the largest other line of its phase that nothing limits. */
    private static Optional<LineInHand> carrier(List<LineInHand> lines, LineInHand line) {
        return lines.stream()
                .filter(other -> other != line && other.allowed().isEmpty())
                .filter(other ->
                        other.line().phase().id().equals(line.line().phase().id()))
                .filter(other -> !lumpsIn(line, other))
                .max(Comparator.comparing(LineInHand::exact));
    }

    /** A strong premix of a gum in water is a lump; glycerin wets it. Common practice, no source. */
    private static boolean lumpsIn(LineInHand line, LineInHand carrier) {
        return is(line, Family.THICKENER) && is(carrier, Family.WATER);
    }

    private static boolean is(LineInHand line, Family family) {
        return line.card().map(card -> card.family() == family).orElse(false);
    }

    private boolean waterWithoutLot(LineInHand line) {
        return isWater(line.line().materialKey())
                && bench.shelf().stream()
                        .noneMatch(stock ->
                                stock.lot().materialKey().equals(line.line().materialKey()));
    }

    private boolean isWater(String materialKey) {
        return book.material(materialKey)
                .filter(m -> m.family() == Family.WATER)
                .isPresent();
    }

    private static Advice noWaterLot() {
        return new Advice(
                "No lot of this water is booked.", List.of("Note its source and date, or book it as a lot."), false);
    }

    private List<Plan.Shortage> shortages(List<PlannedLine> lines, ShelfTaking shelf) {
        return lines.stream()
                .map(PlannedLine::materialKey)
                .distinct()
                .filter(key -> !isWater(key)
                        || bench.shelf().stream()
                                .anyMatch(stock -> stock.lot().materialKey().equals(key)))
                .map(key -> shortage(key, lines, shelf))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Plan.Shortage> shortage(String key, List<PlannedLine> lines, ShelfTaking shelf) {
        Grams needed = Grams.sum(lines.stream()
                .filter(line -> line.materialKey().equals(key))
                .map(PlannedLine::target)
                .toList());
        Grams onHand = shelf.onHand(key);
        Grams missing = needed.minus(onHand);
        return missing.signum() > 0
                ? Optional.of(new Plan.Shortage(key, needed, onHand, RoundUp.twoDigits(missing)))
                : Optional.empty();
    }
}
