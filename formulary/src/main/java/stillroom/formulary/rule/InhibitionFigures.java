package stillroom.formulary.rule;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.quantity.Interval;

/**
 * Partition and published inhibitory concentrations of one preservative.
 *
 * @param preservative key of the acid, phenol or neutral substance
 * @param logP logarithm of its octanol-water partition coefficient, undissociated [dimensionless]
 * @param gramNegative, gramPositive, yeast, mould range of published figures, undissociated [%]
 */
public record InhibitionFigures(
        String preservative,
        Optional<Double> logP,
        Optional<Interval> gramNegative,
        Optional<Interval> gramPositive,
        Optional<Interval> yeast,
        Optional<Interval> mould,
        String source) {
    /** The four groups in the order of their names. */
    public List<Optional<Interval>> groups() {
        return List.of(gramNegative, gramPositive, yeast, mould);
    }
}
