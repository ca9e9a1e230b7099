package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * In what unit a column of amounts is, with what that was told from.
 *
 * @param flags how it was told, where no heading says it
 */
record UnitGuess(Unit unit, List<Flag> flags) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal NEAR_HUNDRED = new BigDecimal("0.5");
    private static final BigDecimal NEAR_ONE = new BigDecimal("0.005");
    private static final BigDecimal LOW = BigDecimal.valueOf(90);
    private static final BigDecimal HIGH = BigDecimal.valueOf(110);

    /**
     * @param told what the maker or the heading says
     * @param stated total that the sheet states
     */
    static UnitGuess of(Optional<Unit> told, boolean byMaker, List<Figure> figures, Optional<BigDecimal> stated) {
        BigDecimal sum = sum(figures);
        boolean toWhole = figures.stream()
                .anyMatch(figure -> figure.kind() == Figure.Kind.TO_WHOLE
                        || figure.kind() == Figure.Kind.AS_NEEDED
                                && figure.value().isEmpty());
        Optional<Unit> inCells = inCells(figures);
        if (told.isPresent()
                && (byMaker
                        || told.get() != Unit.PERCENT
                        || inCells.isPresent()
                        || !isNear(sum, BigDecimal.ONE, NEAR_ONE))) {
            return new UnitGuess(told.get(), List.of());
        }
        if (told.isPresent()) {
            return new UnitGuess(
                    Unit.FRACTION,
                    List.of(Flag.doubt(
                            "The heading says per cent, but the amounts add up to 1: they are taken as shares of 1.")));
        }
        return inCells.map(unit -> new UnitGuess(unit, List.of())).orElseGet(() -> bySum(sum, toWhole, stated));
    }

    private static UnitGuess bySum(BigDecimal sum, boolean toWhole, Optional<BigDecimal> stated) {
        if (toWhole && sum.compareTo(HUNDRED) <= 0) {
            return new UnitGuess(
                    Unit.PERCENT,
                    List.of(Flag.note(
                            "No heading names the unit; with a line to 100 the amounts are taken as per cent.")));
        }
        if (isNear(sum, HUNDRED, NEAR_HUNDRED)) {
            return new UnitGuess(
                    Unit.PERCENT,
                    List.of(Flag.note(
                            "No heading names the unit; the amounts add up to 100 and are taken as per cent.")));
        }
        if (isNear(sum, BigDecimal.ONE, NEAR_ONE)) {
            return new UnitGuess(
                    Unit.FRACTION, List.of(Flag.note("The amounts add up to 1 and are taken as shares of 1.")));
        }
        boolean confirmed = stated.filter(total -> SumRows.isNear(total, sum)).isPresent();
        boolean mistyped = (sum.compareTo(HIGH) < 0 || toWhole) && !confirmed;
        String sentence = "No heading names the unit; the amounts add up to "
                + sum.stripTrailingZeros().toPlainString() + " and are taken as parts of that.";
        boolean percent = sum.compareTo(LOW) > 0 && mistyped;
        return percent
                ? new UnitGuess(
                        Unit.PERCENT,
                        List.of(Flag.doubt("No heading names the unit; the amounts are taken as per cent.")))
                : new UnitGuess(Unit.PART, List.of(mistyped ? Flag.doubt(sentence) : Flag.note(sentence)));
    }

    /** The unit that most cells name. */
    private static Optional<Unit> inCells(List<Figure> figures) {
        List<Unit> named = new ArrayList<>();
        figures.forEach(figure -> figure.unit().ifPresent(named::add));
        return named.stream()
                .max((one, other) -> Collections.frequency(named, one) - Collections.frequency(named, other));
    }

    private static BigDecimal sum(List<Figure> figures) {
        return figures.stream().filter(Figure::isNumber).map(Figure::middle).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static boolean isNear(BigDecimal one, BigDecimal other, BigDecimal by) {
        return one.subtract(other).abs().compareTo(by) <= 0;
    }
}
