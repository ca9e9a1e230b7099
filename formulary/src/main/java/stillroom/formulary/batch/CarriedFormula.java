package stillroom.formulary.batch;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.formula.Step;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;
import stillroom.science.weighing.Apportioned;
import stillroom.science.weighing.Apportionment;
import stillroom.science.weighing.Share;

/**
 * Carries what was made into a formula. Percentages are apportioned at the shown decimals so that they add up to
 * exactly 100; the line that filled up to 100 goes on doing so; corrections become lines to a reading whose range is
 * half to one and a half times what this batch took (common practice, no source), or what the formula already allowed.
 */
public final class CarriedFormula {
    private final AsMade made;
    private final Formula formula;
    private final BatchState state;
    private final MaterialBook book;

    /** @param formula the one that it was made from; empty for free-hand work */
    public CarriedFormula(AsMade made, Formula formula, BatchState state, MaterialBook book) {
        this.made = made;
        this.formula = formula;
        this.state = state;
        this.book = book;
    }

    /** @param decimals of the percentages, 0 to 6; a line too small for them keeps one unit of the last decimal */
    public Formula at(int decimals) {
        if (decimals < 0 || decimals > 6) {
            throw new IllegalArgumentException("decimals are " + decimals + ", allowed 0 to 6");
        }
        List<MadeLine> lines =
                made.lines().stream().filter(line -> !line.made().isZero()).toList();
        if (lines.isEmpty()) {
            return formula;
        }
        Map<String, Percent> shares = apportioned(lines, decimals);
        Optional<String> toHundred = toHundred(lines);
        Optional<String> filler = toHundred.flatMap(made::line).map(MadeLine::materialKey);
        Map<String, List<Line>> byPhase = new LinkedHashMap<>();
        formula.phases().forEach(phase -> byPhase.put(phase.id(), new ArrayList<>()));
        for (MadeLine line : lines) {
            if (isWaterAddedBack(line, filler)) {
                continue;
            }
            byPhase.computeIfAbsent(line.phaseId(), id -> new ArrayList<>())
                    .add(line(line, shares.getOrDefault(line.lineId(), Percent.ZERO), toHundred, decimals));
        }
        return new Formula(byPhase.entrySet().stream()
                .map(entry -> phase(entry.getKey(), entry.getValue()))
                .filter(phase -> !phase.lines().isEmpty() || !phase.steps().isEmpty())
                .toList());
    }

    /** Water poured as a correction belongs to the line that fills up to 100, where that is the same water. */
    private boolean isWaterAddedBack(MadeLine line, Optional<String> filler) {
        return line.target().isEmpty()
                && filler.filter(line.materialKey()::equals).isPresent()
                && line.toReading()
                && reading(line).isEmpty();
    }

    private static Map<String, Percent> apportioned(List<MadeLine> lines, int decimals) {
        BigDecimal unit = BigDecimal.ONE.movePointLeft(decimals);
        List<Share> shares = lines.stream()
                .map(line -> new Share(line.made().value(), unit, Optional.of(unit), Optional.empty()))
                .toList();
        List<BigDecimal> parts = parts(shares);
        Map<String, Percent> percents = new LinkedHashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            percents.put(lines.get(i).lineId(), new Percent(parts.get(i)));
        }
        return percents;
    }

    /** In single steps; where too few decimals make that impossible, the largest line takes what is left over. */
    private static List<BigDecimal> parts(List<Share> shares) {
        BigDecimal hundred = BigDecimal.valueOf(100);
        if (Apportionment.spread(shares, hundred) instanceof Apportioned.Exactly exactly) {
            return exactly.parts();
        }
        int largest = IntStream.range(0, shares.size())
                .boxed()
                .max(Comparator.comparing(i -> shares.get(i).exact()))
                .orElseThrow();
        if (Apportionment.ontoResidue(shares, hundred, largest) instanceof Apportioned.Exactly exactly) {
            return exactly.parts();
        }
        throw new IllegalArgumentException(shares.size() + " lines do not fit into 100 % at these decimals");
    }

    /** The line that filled up to 100; in free-hand work the largest water. */
    private Optional<String> toHundred(List<MadeLine> lines) {
        if (formula.phases().isEmpty()) {
            return lines.stream()
                    .filter(line -> !line.toReading() && isWater(line))
                    .max(Comparator.comparing(MadeLine::made))
                    .map(MadeLine::lineId);
        }
        return lines.stream()
                .map(MadeLine::lineId)
                .filter(id -> formula.line(id)
                        .map(Line::amount)
                        .filter(Amount.ToHundred.class::isInstance)
                        .isPresent())
                .findFirst();
    }

    private boolean isWater(MadeLine line) {
        return book.material(line.materialKey())
                .filter(card -> card.family() == Family.WATER)
                .isPresent();
    }

    private Line line(MadeLine line, Percent share, Optional<String> toHundred, int decimals) {
        String note = formula.line(line.lineId()).map(Line::note).orElse("");
        if (toHundred.filter(line.lineId()::equals).isPresent()) {
            return new Line(line.lineId(), line.materialKey(), new Amount.ToHundred(), note);
        }
        Optional<Amount> toReading = line.toReading() ? toReading(line, share, decimals) : Optional.empty();
        return new Line(line.lineId(), line.materialKey(), toReading.orElse(new Amount.Fixed(share)), note);
    }

    private Optional<Amount> toReading(MadeLine line, Percent share, int decimals) {
        Optional<Amount.ToReading> before = formula.line(line.lineId())
                .map(Line::amount)
                .filter(Amount.ToReading.class::isInstance)
                .map(Amount.ToReading.class::cast);
        if (before.isPresent()) {
            PercentRange range = widened(before.get().range(), share);
            return Optional.of(new Amount.ToReading(before.get().reading(), share, range));
        }
        return reading(line).map(kind -> new Amount.ToReading(kind, share, around(share, decimals)));
    }

    private static PercentRange widened(PercentRange range, Percent share) {
        Percent low = range.low().compareTo(share) < 0 ? range.low() : share;
        Percent high = range.high().compareTo(share) > 0 ? range.high() : share;
        return new PercentRange(low, high);
    }

    private static PercentRange around(Percent share, int decimals) {
        BigDecimal half = share.value().movePointLeft(1).multiply(BigDecimal.valueOf(5));
        BigDecimal low = half.setScale(decimals, RoundingMode.FLOOR);
        BigDecimal high = share.value().add(half).setScale(decimals, RoundingMode.CEILING);
        return new PercentRange(new Percent(low), new Percent(high.min(BigDecimal.valueOf(100))));
    }

    /** Which reading a correction served; water and the like served none in particular. */
    private Optional<ReadingKind> reading(MadeLine line) {
        return state.corrections().stream()
                .map(Logged::event)
                .filter(pour -> pour.materialKey().equals(line.materialKey()))
                .findFirst()
                .flatMap(pour -> switch (pour.purpose()) {
                    case CORRECTION_ACID, CORRECTION_BASE -> Optional.of(ReadingKind.PH);
                    case CORRECTION_THICKENER -> Optional.of(ReadingKind.VISCOSITY);
                    case CORRECTION_OTHER -> Optional.of(ReadingKind.OTHER);
                    case CORRECTION_WATER, LINE, MISTAKE -> Optional.empty();
                });
    }

    private Phase phase(String id, List<Line> lines) {
        Optional<Phase> before = formula.phase(id);
        if (before.isPresent()) {
            return new Phase(id, before.get().name(), lines, before.get().steps());
        }
        return new Phase(id, id, lines, stepsIn(id));
    }

    /** What was done in a vessel of its own becomes the procedure of its phase. */
    private List<Step> stepsIn(String vessel) {
        return state.steps().stream()
                .filter(done -> done.event().vessel().equals(vessel))
                .map(done -> new Step(
                        "step-" + done.number(),
                        done.event().doing(),
                        done.event().celsius(),
                        "",
                        done.event().minutes(),
                        "",
                        ""))
                .toList();
    }
}
