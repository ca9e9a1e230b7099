package stillroom.formulary.batch;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.formula.Step;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Grams;
import stillroom.science.weighing.LeastLarger;
import stillroom.science.weighing.Steps;

/** Finds the least larger batch that real balances can weigh: the exact least one, then up until the steps fit. */
final class LargerBatchSearch {
    private static final double HEATED_CELSIUS = 40;
    private static final BigDecimal A_LITTLE_LARGER = new BigDecimal("1.0005");
    private static final int TRIES = 400;

    private final OverPour overPour;
    private final List<PlannedLine> lines;

    LargerBatchSearch(OverPour overPour) {
        this.overPour = overPour;
        this.lines = overPour.plan().lines().stream()
                .filter(line -> line.target().signum() > 0)
                .toList();
    }

    Mend.LargerBatch found() {
        List<LeastLarger.Part> parts = lines.stream().map(this::part).toList();
        BigDecimal whole = LeastLarger.whole(parts, overPour.plan().batch().value());
        List<Grams> finals = rounded(parts, whole);
        for (int i = 0; i < TRIES && !withinTolerance(parts, finals); i++) {
            whole = whole.multiply(A_LITTLE_LARGER, MathContext.DECIMAL64);
            finals = rounded(parts, whole);
        }
        List<Addition> additions = additions(finals);
        return new Mend.LargerBatch(Grams.sum(finals), additions, against(additions, Grams.sum(finals)));
    }

    private LeastLarger.Part part(PlannedLine line) {
        BigDecimal batch = overPour.plan().batch().value();
        BigDecimal fraction = line.target().value().divide(batch, MathContext.DECIMAL128);
        BigDecimal tolerance = line.tolerance()
                .value()
                .divide(line.target().value(), MathContext.DECIMAL64)
                .min(new BigDecimal("0.5"));
        return new LeastLarger.Part(fraction, tolerance, there(line).value());
    }

    private Grams there(PlannedLine line) {
        Grams there = Grams.sum(overPour.state().inVessels().contents().stream()
                .filter(content ->
                        content.lineId().filter(line.lineId()::equals).isPresent())
                .map(Content::mass)
                .toList());
        return there.signum() > 0 ? there : Grams.ZERO;
    }

    /** What is in cannot be rounded; what is added can, to a step that keeps the tolerance where there is one. */
    private List<Grams> rounded(List<LeastLarger.Part> parts, BigDecimal whole) {
        List<BigDecimal> exact = LeastLarger.masses(parts, whole);
        List<Grams> finals = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            LeastLarger.Part part = parts.get(i);
            BigDecimal step = overPour.step(lines.get(i)).value();
            BigDecimal wanted = part.fraction().multiply(whole);
            BigDecimal off = part.tolerance().multiply(wanted);
            BigDecimal lowest = Steps.notBelow(wanted.subtract(off).subtract(part.there()), step);
            BigDecimal highest = Steps.notAbove(wanted.add(off).subtract(part.there()), step);
            BigDecimal nearest = Steps.nearest(exact.get(i).subtract(part.there()), step);
            BigDecimal kept =
                    lowest.compareTo(highest) <= 0 ? nearest.max(lowest).min(highest) : nearest;
            finals.add(new Grams(part.there().add(kept.max(BigDecimal.ZERO))));
        }
        return finals;
    }

    private static boolean withinTolerance(List<LeastLarger.Part> parts, List<Grams> finals) {
        BigDecimal whole = Grams.sum(finals).value();
        for (int i = 0; i < parts.size(); i++) {
            BigDecimal wanted = parts.get(i).fraction().multiply(whole);
            BigDecimal off = finals.get(i).value().subtract(wanted).abs();
            if (off.compareTo(parts.get(i).tolerance().multiply(wanted)) > 0) {
                return false;
            }
        }
        return true;
    }

    private List<Addition> additions(List<Grams> finals) {
        List<Addition> additions = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Grams more = finals.get(i).minus(there(lines.get(i)));
            if (more.signum() > 0) {
                additions.add(new Addition(lines.get(i).lineId(), lines.get(i).materialKey(), more));
            }
        }
        return additions;
    }

    private List<String> against(List<Addition> additions, Grams batch) {
        List<String> against = new ArrayList<>();
        overPour.state().openVessels().stream()
                .flatMap(vessel -> vessel.capacity().stream())
                .max(Grams::compareTo)
                .filter(capacity -> capacity.compareTo(batch) < 0)
                .ifPresent(capacity -> against.add("The largest vessel holds " + capacity + " g, the batch would be "
                        + VesselRules.shown(batch) + " g."));
        additions.forEach(addition -> stock(addition).ifPresent(against::add));
        additions.forEach(addition -> maximum(addition).ifPresent(against::add));
        additions.forEach(addition -> heat(addition).ifPresent(against::add));
        return against;
    }

    private Optional<String> stock(Addition addition) {
        List<Grams> lots = overPour.shelf().stream()
                .filter(stock -> stock.lot().materialKey().equals(addition.materialKey()))
                .map(stock -> stock.onHand())
                .toList();
        // Water without a booked lot, and bottles never booked, are no reason against.
        return !lots.isEmpty() && Grams.sum(lots).compareTo(addition.mass()) < 0
                ? Optional.of("The book has " + Grams.sum(lots) + " g of " + addition.materialKey() + ", "
                        + VesselRules.shown(addition.mass()) + " g are to be added.")
                : Optional.empty();
    }

    private Optional<String> maximum(Addition addition) {
        return overPour.plan()
                .line(addition.lineId())
                .flatMap(overPour::balance)
                .filter(balance -> balance.maximum().compareTo(addition.mass()) < 0)
                .map(balance -> VesselRules.shown(addition.mass()) + " g of " + addition.materialKey()
                        + " are above the maximum of " + balance.name() + ".");
    }

    /** Once combined, what had to be melted or wetted in heat cannot simply follow. */
    private Optional<String> heat(Addition addition) {
        Optional<PlannedLine> line = overPour.plan().line(addition.lineId());
        boolean combined = overPour.state().vessels().stream().anyMatch(vessel -> !vessel.open());
        boolean heated = line.flatMap(one -> overPour.formula().phase(one.phaseId())).stream()
                .flatMap(phase -> phase.steps().stream())
                .map(Step::celsius)
                .flatMap(Optional::stream)
                .anyMatch(celsius -> celsius >= HEATED_CELSIUS);
        return combined && heated
                ? Optional.of(addition.materialKey()
                        + " belongs to a heated phase: make the additions as a second batch and blend.")
                : Optional.empty();
    }
}
