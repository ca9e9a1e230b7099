package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Whether anything in the sheet confirms masses: a total, a batch size, per cent beside, or at least a round sum. */
final class Confirmed {
    private static final int ROUND = 2;

    private Confirmed() {}

    /** @param beside whether a batch size or another column was compared already */
    static Optional<Flag> judge(List<Figure> figures, Unit unit, boolean beside, List<Row> segment, int main) {
        boolean masses =
                unit.grams().isPresent() && figures.stream().allMatch(figure -> figure.kind() == Figure.Kind.EXACT);
        boolean stated = segment.stream()
                .anyMatch(row -> (row.kind() == RowKind.TOTAL || row.kind() == RowKind.SUBTOTAL)
                        && main < row.figures().size()
                        && row.figures().get(main).isNumber());
        if (!masses || beside || stated) {
            return Optional.empty();
        }
        BigDecimal grams = figures.stream()
                .map(figure -> figure.middle()
                        .multiply(figure.unit()
                                .or(() -> Optional.of(unit))
                                .flatMap(Unit::grams)
                                .orElse(BigDecimal.ZERO)))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal own = figures.stream().map(Figure::middle).reduce(BigDecimal.ZERO, BigDecimal::add);
        return isRound(grams) || isRound(own)
                ? Optional.empty()
                : Optional.of(Flag.doubt("The lines add up to " + Shares.plain(grams)
                        + " g, and nothing in the sheet says whether that is all of it."));
    }

    static boolean isRound(BigDecimal sum) {
        BigDecimal plain = sum.stripTrailingZeros();
        boolean five =
                plain.unscaledValue().mod(java.math.BigInteger.valueOf(5)).signum() == 0;
        return plain.precision() <= ROUND || plain.precision() == ROUND + 1 && five;
    }
}
