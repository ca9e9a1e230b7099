package stillroom.desk.batches.bench;

import java.math.BigDecimal;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Line;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Grams;

/**
 * The line that fills up to 100 may be far off without harm, so its tolerance is wide; a figure with two digits changed
 * round passes it unseen. Beyond 2 % of the line the figure is asked for again. Common practice, no source.
 */
final class QsFigure {
    private static final BigDecimal CHECK_FRACTION = new BigDecimal("0.02");

    private QsFigure() {}

    /** How far off the figure may be unasked [g]; none for other lines. */
    static Optional<Grams> allowed(BatchWork work, PlannedLine line) {
        return work.formula()
                .line(line.lineId())
                .map(Line::amount)
                .filter(Amount.ToHundred.class::isInstance)
                .map(amount -> new Grams(line.target().value().multiply(CHECK_FRACTION)));
    }

    /** Whether so much in all lies within the tolerance and is asked for again all the same. */
    static boolean doubtful(BatchWork work, PlannedLine line, Grams poured) {
        Grams off = poured.minus(line.target()).abs();
        return off.compareTo(line.tolerance()) <= 0
                && allowed(work, line).filter(most -> off.compareTo(most) > 0).isPresent();
    }
}
