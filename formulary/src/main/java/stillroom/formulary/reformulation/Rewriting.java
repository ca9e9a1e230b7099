package stillroom.formulary.reformulation;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.material.Family;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

/**
 * Writes fractions back into the formula: lines keep their place, those at 0 go, a newcomer stands in the phase of its shelf. Percentages
 * are rounded; the q.s. line, or else the largest free one, takes the rest.
 */
final class Rewriting {
    static final int DECIMALS = 3;

    private final Problem problem;
    private final List<BigDecimal> percents;

    Rewriting(Problem problem, List<Double> fractions) {
        this.problem = problem;
        this.percents = rounded(fractions);
    }

    /** What the formula says, as fractions. */
    List<Double> fractions() {
        return percents.stream()
                .map(percent -> percent.movePointLeft(2).doubleValue())
                .toList();
    }

    private List<BigDecimal> rounded(List<Double> fractions) {
        List<BigDecimal> rounded = new ArrayList<>();
        BigDecimal sum = BigDecimal.ZERO;
        int rest = 0;
        for (int j = 0; j < fractions.size(); j++) {
            Candidate one = problem.candidates().get(j);
            BigDecimal percent = one.fixed()
                    ? exact(one)
                    : BigDecimal.valueOf(100 * fractions.get(j)).setScale(DECIMALS, RoundingMode.HALF_EVEN);
            rounded.add(percent);
            sum = sum.add(percent);
            rest = restScore(j, fractions) > restScore(rest, fractions) ? j : rest;
        }
        rounded.set(rest, rounded.get(rest).add(BigDecimal.valueOf(100)).subtract(sum));
        return rounded;
    }

    private static BigDecimal exact(Candidate fixed) {
        return fixed.line()
                .orElseThrow()
                .amount()
                .match(
                        given -> given.percent().value(),
                        () -> BigDecimal.valueOf(100 * fixed.now()),
                        reading -> reading.expected().value());
    }

    private double restScore(int j, List<Double> fractions) {
        Candidate one = problem.candidates().get(j);
        boolean toHundred = one.line()
                .map(line -> line.amount() instanceof Amount.ToHundred)
                .orElse(false);
        return one.fixed() ? -1 : fractions.get(j) + (toHundred && fractions.get(j) > 0 ? 2 : 0);
    }

    Formula formula(Formula before) {
        List<Phase> phases = new ArrayList<>();
        for (Phase phase : before.phases()) {
            List<Line> lines = new ArrayList<>();
            phase.lines().forEach(line -> kept(line).ifPresent(lines::add));
            for (int j = 0; j < percents.size(); j++) {
                Candidate one = problem.candidates().get(j);
                if (one.isNewcomer()
                        && percents.get(j).signum() > 0
                        && home(one, before).equals(phase.id())) {
                    lines.add(new Line("new-" + one.key(), one.key(), amount(one, percents.get(j), before), ""));
                }
            }
            phases.add(new Phase(phase.id(), phase.name(), lines, phase.steps()));
        }
        return new Formula(phases);
    }

    /** In place of a line that is q.s. to a reading it is so too, with a range as wide for its dose. */
    private static Amount amount(Candidate newcomer, BigDecimal percent, Formula before) {
        return before.lines().stream()
                .filter(line ->
                        newcomer.inPlace().map(place -> place.isFor(line)).orElse(false))
                .map(Line::amount)
                .filter(Amount.ToReading.class::isInstance)
                .map(Amount.ToReading.class::cast)
                .findFirst()
                .<Amount>map(old -> like(old, percent))
                .orElseGet(() -> new Amount.Fixed(new Percent(percent)));
    }

    private static Amount like(Amount.ToReading old, BigDecimal percent) {
        BigDecimal was = old.expected().value();
        Percent low = scaled(old.range().low(), percent, was, RoundingMode.DOWN);
        Percent high = scaled(old.range().high(), percent, was, RoundingMode.UP);
        return new Amount.ToReading(old.reading(), new Percent(percent), new PercentRange(low, high));
    }

    private static Percent scaled(Percent end, BigDecimal percent, BigDecimal was, RoundingMode outwards) {
        return was.signum() == 0
                ? new Percent(percent)
                : new Percent(end.value().multiply(percent).divide(was, DECIMALS, outwards));
    }

    private Optional<Line> kept(Line line) {
        for (int j = 0; j < percents.size(); j++) {
            if (problem.candidates().get(j).line().map(line::equals).orElse(false)) {
                return percents.get(j).signum() > 0
                                || problem.candidates().get(j).fixed()
                        ? Optional.of(changed(line, percents.get(j)))
                        : Optional.empty();
            }
        }
        return Optional.of(line);
    }

    private static Line changed(Line line, BigDecimal percent) {
        return line.amount() instanceof Amount.Fixed
                ? new Line(line.id(), line.materialKey(), new Amount.Fixed(new Percent(percent)), line.note())
                : line;
    }

    /** The phase of the line that it stands in for, or of the largest line of the same shelf; else the first. */
    private String home(Candidate newcomer, Formula before) {
        Family family = newcomer.card().family();
        String home = before.phases().get(0).id();
        double largest = -1;
        for (Phase phase : before.phases()) {
            for (Candidate one : problem.candidates()) {
                boolean here = one.line().map(phase.lines()::contains).orElse(false);
                if (here
                        && newcomer.inPlace()
                                .map(place -> place.isFor(one.line().orElseThrow()))
                                .orElse(false)) {
                    return phase.id();
                }
                if (here && one.card().family() == family && one.now() > largest) {
                    largest = one.now();
                    home = phase.id();
                }
            }
        }
        return home;
    }
}
