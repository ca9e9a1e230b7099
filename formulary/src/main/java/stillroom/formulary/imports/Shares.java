package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The amounts of a formula as per cent of it.
 *
 * @param percents one for each figure; empty where it has none or none that can be reckoned
 * @param lineFlags one list for each figure
 * @param flags about the whole
 */
record Shares(List<Optional<BigDecimal>> percents, List<List<Flag>> lineFlags, List<Flag> flags) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final MathContext DIGITS = new MathContext(16);
    private static final int DECIMALS = 4;
    private static final int FINE_DECIMALS = 7;
    private static final BigDecimal FINE = new BigDecimal("0.05");

    /**
     * @param unit of the column
     * @param batch mass of the whole, where the sheet says it [g]
     * @param stated total of the column, where the sheet says it, in the column's unit
     */
    static Shares of(List<Figure> figures, Unit unit, Optional<BigDecimal> batch, Optional<BigDecimal> stated) {
        Optional<BigDecimal> whole = whole(figures, unit, batch, stated);
        boolean masses = unit.grams().isPresent();
        boolean confirmed = stated.or(() -> batch)
                .filter(total ->
                        !isFar(sum(figures, unit), total.multiply(unit.grams().orElse(BigDecimal.ONE))))
                .isPresent();
        List<Flag> flags = new ArrayList<>();
        List<Optional<BigDecimal>> percents = new ArrayList<>();
        List<List<Flag>> lineFlags = new ArrayList<>();
        for (Figure figure : figures) {
            Unit own = figure.unit().orElse(unit);
            List<Flag> said = new ArrayList<>();
            percents.add(value(figure)
                    .flatMap(value -> percent(
                            value,
                            own,
                            unit,
                            masses ? whole : own.grams().isPresent() ? batch : whole,
                            confirmed,
                            said)));
            lineFlags.add(said);
        }
        if (masses || unit == Unit.PART) {
            judgeBatch(figures, unit, batch, flags);
            judgeUnweighed(figures, unit, flags);
            boolean open = figures.stream().anyMatch(figure -> !figure.isNumber() && figure.isAmount());
            round(percents, !open && !batchDiffers(figures, unit, whole));
        }
        return new Shares(percents, lineFlags, flags);
    }

    private static Optional<BigDecimal> value(Figure figure) {
        boolean expected = figure.kind() == Figure.Kind.TO_READING || figure.kind() == Figure.Kind.AS_NEEDED;
        return figure.isNumber() ? Optional.of(figure.middle()) : expected ? figure.value() : Optional.empty();
    }

    private static Optional<BigDecimal> percent(
            BigDecimal value, Unit own, Unit column, Optional<BigDecimal> whole, boolean confirmed, List<Flag> said) {
        if (own == Unit.VOLUME) {
            said.add(Flag.doubt("The amount is a volume; weigh it, or reckon it with the density."));
            return Optional.empty();
        }
        if (own != column) {
            String sentence = "This amount is in " + own.words() + ", where the others are in " + column.words() + ".";
            boolean sure =
                    confirmed && own.grams().isPresent() && column.grams().isPresent();
            said.add(sure ? Flag.note(sentence) : Flag.doubt(sentence));
        }
        if (own.isShare()) {
            return own.percent().map(value::multiply);
        }
        if (whole.isEmpty() || whole.get().signum() <= 0) {
            said.add(Flag.doubt("The mass of the whole is not known, so that no percentage can be reckoned."));
            return Optional.empty();
        }
        BigDecimal grams = value.multiply(own.grams().orElse(BigDecimal.ONE));
        return Optional.of(grams.multiply(HUNDRED).divide(whole.get(), DIGITS));
    }

    /** The mass, or the number of parts, that all lines together are. */
    private static Optional<BigDecimal> whole(
            List<Figure> figures, Unit unit, Optional<BigDecimal> batch, Optional<BigDecimal> stated) {
        if (unit.isShare() || unit == Unit.VOLUME) {
            return batch;
        }
        Optional<BigDecimal> upTo = figures.stream()
                .filter(figure -> figure.kind() == Figure.Kind.TO_WHOLE)
                .flatMap(figure -> figure.value().map(value -> grams(value, figure, unit)).stream())
                .findFirst();
        if (upTo.isPresent()) {
            return upTo;
        }
        boolean open = figures.stream()
                .anyMatch(figure -> figure.kind() == Figure.Kind.TO_WHOLE
                        || figure.kind() == Figure.Kind.AS_NEEDED
                                && figure.value().isEmpty());
        Optional<BigDecimal> total =
                stated.map(value -> value.multiply(unit.grams().orElse(BigDecimal.ONE)));
        return open ? batch.or(() -> total) : Optional.of(sum(figures, unit));
    }

    private static BigDecimal sum(List<Figure> figures, Unit unit) {
        return figures.stream()
                .filter(figure -> value(figure).isPresent())
                .filter(figure -> isMassOrPart(figure.unit().orElse(unit)))
                .map(figure -> grams(value(figure).orElseThrow(), figure, unit))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static boolean isMassOrPart(Unit unit) {
        return !unit.isShare() && unit != Unit.VOLUME;
    }

    private static BigDecimal grams(BigDecimal value, Figure figure, Unit unit) {
        return value.multiply(figure.unit().orElse(unit).grams().orElse(BigDecimal.ONE));
    }

    private static boolean batchDiffers(List<Figure> figures, Unit unit, Optional<BigDecimal> whole) {
        return whole.map(mass -> mass.compareTo(sum(figures, unit)) != 0).orElse(true);
    }

    private static void judgeBatch(List<Figure> figures, Unit unit, Optional<BigDecimal> batch, List<Flag> flags) {
        boolean open = figures.stream()
                .anyMatch(figure -> figure.kind() == Figure.Kind.TO_WHOLE || figure.kind() == Figure.Kind.AS_NEEDED);
        BigDecimal sum = sum(figures, unit);
        if (!open && batch.isPresent() && unit.grams().isPresent() && isFar(sum, batch.get())) {
            flags.add(Flag.doubt("The sheet says that it is for " + plain(batch.get()) + " g, but the lines add up to "
                    + plain(sum) + " g; percentages are reckoned of the sum."));
        }
    }

    /** A line without a mass would have its share as well, so that all others would be smaller. */
    private static void judgeUnweighed(List<Figure> figures, Unit unit, List<Flag> flags) {
        boolean unweighed = figures.stream()
                .anyMatch(figure -> figure.kind() == Figure.Kind.UNREADABLE
                        || figure.kind() == Figure.Kind.NONE
                        || figure.isNumber() && !isMassOrPart(figure.unit().orElse(unit)));
        if (unweighed) {
            flags.add(
                    Flag.doubt("Some lines have no mass, so that the shares of all others are reckoned without them."));
        }
    }

    private static boolean isFar(BigDecimal one, BigDecimal other) {
        return one.subtract(other).abs().multiply(BigDecimal.valueOf(500)).compareTo(other) > 0;
    }

    /** To the decimals that a maker reads; the largest line takes what is left, so that the sum is exact. */
    private static void round(List<Optional<BigDecimal>> percents, boolean toHundred) {
        BigDecimal sum = BigDecimal.ZERO;
        int largest = -1;
        for (int i = 0; i < percents.size(); i++) {
            Optional<BigDecimal> rounded = percents.get(i)
                    .map(percent -> percent.setScale(
                            percent.compareTo(FINE) < 0 ? FINE_DECIMALS : DECIMALS, RoundingMode.HALF_EVEN));
            percents.set(i, rounded);
            BigDecimal value = rounded.orElse(BigDecimal.ZERO);
            sum = sum.add(value);
            largest = largest < 0 || value.compareTo(percents.get(largest).orElse(BigDecimal.ZERO)) > 0 ? i : largest;
        }
        if (toHundred && largest >= 0 && percents.get(largest).isPresent()) {
            percents.set(largest, Optional.of(percents.get(largest).get().add(HUNDRED.subtract(sum))));
        }
    }

    static String plain(BigDecimal value) {
        return value.round(new MathContext(8)).stripTrailingZeros().toPlainString();
    }
}
