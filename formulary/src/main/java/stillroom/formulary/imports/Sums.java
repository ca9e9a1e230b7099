package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.formula.Amount;

/** Compares the sums of a formula with what the sheet states and with 100. */
final class Sums {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal NEAR = new BigDecimal("0.0005");
    private static final BigDecimal ROUNDING = new BigDecimal("0.0051");

    private Sums() {}

    static List<Flag> judge(List<Row> segment, int place, Unit unit, List<Optional<Amount>> amounts) {
        List<Flag> flags = new ArrayList<>();
        boolean rest = amounts.stream()
                .anyMatch(amount ->
                        amount.filter(Amount.ToHundred.class::isInstance).isPresent());
        BigDecimal sum = amounts.stream()
                .flatMap(Optional::stream)
                .map(amount -> amount.match(
                        fixed -> fixed.percent().value(),
                        () -> BigDecimal.ZERO,
                        reading -> reading.expected().value()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        if (rest && sum.compareTo(HUNDRED) > 0) {
            flags.add(Flag.doubt(
                    "The other lines come to " + Shares.plain(sum) + " %, so that nothing is left to fill up to 100."));
        }
        if (!rest && sum.subtract(HUNDRED).abs().compareTo(NEAR) > 0) {
            flags.add(Flag.doubt("The lines add up to " + Shares.plain(sum) + " %."));
        }
        judgeTotals(segment, place, unit, rest, flags);
        return flags;
    }

    private static void judgeTotals(List<Row> segment, int place, Unit unit, boolean rest, List<Flag> flags) {
        BigDecimal all = BigDecimal.ZERO;
        BigDecimal part = BigDecimal.ZERO;
        boolean open = false;
        BigDecimal whole = segment.stream()
                .filter(row ->
                        row.kind() == RowKind.LINE && place < row.figures().size())
                .map(row -> scaled(row.figures().get(place), unit))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        for (Row row : segment) {
            Figure figure = place < row.figures().size() ? row.figures().get(place) : Figure.NOTHING;
            if (row.kind() == RowKind.LINE) {
                all = all.add(scaled(figure, unit));
                part = part.add(scaled(figure, unit));
                open = open || !figure.isNumber();
            }
            if (row.kind() == RowKind.TOTAL && figure.isNumber()) {
                // A total may stand above its lines.
                judge(row, figure.middleIn(unit), total(all.signum() == 0 ? whole : all, unit, rest), flags);
            }
            if (row.kind() == RowKind.SUBTOTAL && figure.isNumber() && !open) {
                judge(row, figure.middleIn(unit), Optional.of(part), flags);
            }
            if (row.kind() == RowKind.SUBTOTAL || row.kind() == RowKind.PHASE) {
                part = BigDecimal.ZERO;
                open = false;
            }
        }
    }

    private static BigDecimal scaled(Figure figure, Unit unit) {
        return figure.isNumber() ? figure.middleIn(unit) : BigDecimal.ZERO;
    }

    /** What a total must say: with a line to 100 in per cent 100; in grams it is not known. */
    private static Optional<BigDecimal> total(BigDecimal sum, Unit unit, boolean rest) {
        if (!rest) {
            return Optional.of(sum);
        }
        return unit == Unit.PERCENT
                ? Optional.of(HUNDRED)
                : unit == Unit.FRACTION ? Optional.of(BigDecimal.ONE) : Optional.empty();
    }

    private static void judge(Row row, BigDecimal stated, Optional<BigDecimal> sum, List<Flag> flags) {
        BigDecimal allowed = ROUNDING.max(stated.movePointLeft(4));
        if (sum.isPresent() && stated.subtract(sum.get()).abs().compareTo(allowed) > 0) {
            flags.add(Flag.doubt("Row " + (row.place() + 1) + " states a total of " + Shares.plain(stated)
                    + ", but the lines add up to " + Shares.plain(sum.get()) + "."));
        }
    }
}
