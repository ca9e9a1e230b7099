package stillroom.formulary.batch;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.evaluation.Portion;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;

/**
 * What was really made, from the weighings: by line, by lot, and how much.
 *
 * @param lines planned lines in their order, then what no line asked for
 * @param lots one per material and lot, in order of first use
 * @param added everything put in, exact [g]
 * @param product in vessels, filled and retained, as a balance would show it [g]
 * @param evaporated lost from the product
 * @param hotPours what went in hotter than it bears
 */
public record AsMade(
        List<MadeLine> lines,
        List<MadeLot> lots,
        Grams added,
        Grams product,
        Evaporated evaporated,
        List<HotPour> hotPours) {
    /** Phase of what no line asked for. */
    public static final String CORRECTIONS = "corrections";

    public AsMade {
        lines = List.copyOf(lines);
        lots = List.copyOf(lots);
        hotPours = List.copyOf(hotPours);
    }

    /**
     * @param formula the version that it was made from; empty for free-hand work
     * @param book to tell whether what evaporated was water
     */
    public static AsMade of(BatchState state, Formula formula, MaterialBook book) {
        return new MadeReckoning(state, formula, book).asMade();
    }

    /** Lines beyond their tolerance, and planned lines never poured. */
    public List<MadeLine> deviations() {
        return lines.stream().filter(line -> !line.withinTolerance()).toList();
    }

    /** The same subject that a formula would give, for the same evaluation. */
    public Subject subject(Brief brief, Formula formula, BatchState state) {
        List<Portion> portions = lines.stream()
                .filter(line -> !line.made().isZero())
                .map(line ->
                        new Portion(line.lineId(), phaseName(line, formula), line.materialKey(), fraction(line.made())))
                .toList();
        return new Subject(brief, portions, formula.phases(), waterLostFraction(), MeasuredPh.of(state));
    }

    /** Water lost per mass as added; zero where the loss cannot be called water. */
    public double waterLostFraction() {
        BigDecimal lost = evaporated.lost().value();
        if (!evaporated.asWater() || lost.signum() <= 0) {
            return 0;
        }
        return lost.doubleValue() / product.plus(evaporated.lost()).doubleValue();
    }

    private static String phaseName(MadeLine line, Formula formula) {
        return formula.phase(line.phaseId()).map(Phase::name).orElse(line.phaseId());
    }

    private static MassFraction fraction(Percent percent) {
        return MassFraction.exactly(percent.massFraction());
    }

    /** The line with this id, where it was planned or poured. */
    public Optional<MadeLine> line(String lineId) {
        return lines.stream().filter(line -> line.lineId().equals(lineId)).findFirst();
    }
}
