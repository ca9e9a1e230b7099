package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Compares the column that counts with those beside it, line by line: grams with per cent. */
record Checks(List<Row> lines, Variant variant, Shares shares, Map<Integer, Double> wholes) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final double NEAR = 0.02;

    static Checks of(List<Row> lines, Variant variant, Shares shares) {
        Checks bare = new Checks(lines, variant, shares, Map.of());
        Map<Integer, Double> wholes = new HashMap<>();
        variant.checks().forEach(place -> bare.agreed(place).ifPresent(mass -> wholes.put(place, mass)));
        return new Checks(lines, variant, shares, Map.copyOf(wholes));
    }

    private Optional<Double> whole(int place) {
        return Optional.ofNullable(wholes.get(place));
    }

    /** The percentages, with those that only a column beside can tell. */
    List<Optional<BigDecimal>> completed() {
        List<Optional<BigDecimal>> percents = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            int at = i;
            percents.add(shares.percents().get(i).or(() -> isFilled(at) ? filled(at) : Optional.empty()));
        }
        return percents;
    }

    /** The figures, with those that only a column beside can tell. */
    List<Figure> figures(List<Figure> figures) {
        List<Figure> filled = new ArrayList<>();
        for (int i = 0; i < figures.size(); i++) {
            filled.add(
                    isFilled(i) && filled(i).isPresent()
                            ? Figure.exact(filled(i).get())
                            : figures.get(i));
        }
        return filled;
    }

    private boolean isFilled(int i) {
        return main(i).kind() == Figure.Kind.NONE && !variant.checks().isEmpty();
    }

    private Optional<BigDecimal> filled(int i) {
        for (int place : variant.checks()) {
            Optional<Double> whole = whole(place);
            if (whole.isPresent() && check(i, place).isNumber()) {
                double percent = mass(i, place) / whole.get() * 100;
                return Optional.of(new BigDecimal(percent, new MathContext(8)).stripTrailingZeros());
            }
        }
        return Optional.empty();
    }

    List<Flag> flags(int i) {
        List<Flag> flags = new ArrayList<>();
        if (isFilled(i)) {
            filled(i).ifPresent(percent -> flags.add(Flag.doubt("Reckoned from the column beside; its own is empty.")));
            return flags;
        }
        for (int place : variant.checks()) {
            Optional<Double> whole = whole(place);
            Optional<BigDecimal> percent = shares.percents().get(i);
            if (whole.isPresent()
                    && percent.isPresent()
                    && check(i, place).isNumber()
                    && differs(i, place, whole.get(), percent.get())) {
                flags.add(Flag.doubt(
                        "The column beside says " + Shares.plain(check(i, place).middle())
                                + ", which is "
                                + Shares.plain(new BigDecimal(mass(i, place) / whole.get() * 100, new MathContext(4)))
                                + " % where this is " + Shares.plain(percent.get()) + " %."));
            }
        }
        return flags;
    }

    private boolean differs(int i, int place, double whole, BigDecimal percent) {
        double beside = mass(i, place) / whole * 100;
        double step = Math.pow(10, -Math.max(0, check(i, place).middle().scale())) / whole * 100;
        double allowed = Math.max(Math.max(0.006, step), NEAR * percent.doubleValue());
        return Math.abs(beside - percent.doubleValue()) > allowed;
    }

    /** The mass of the whole that most lines of a column agree on. */
    private Optional<Double> agreed(int place) {
        List<Double> found = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Optional<BigDecimal> percent = shares.percents().get(i);
            if (percent.isPresent()
                    && percent.get().signum() > 0
                    && check(i, place).isNumber()
                    && mass(i, place) > 0) {
                found.add(mass(i, place) * HUNDRED.doubleValue() / percent.get().doubleValue());
            }
        }
        return found.isEmpty()
                ? Optional.empty()
                : Optional.of(found.stream().sorted().toList().get(found.size() / 2));
    }

    private double mass(int i, int place) {
        Unit unit = check(i, place).unit().orElse(Unit.GRAM);
        return check(i, place).middle().doubleValue()
                * unit.grams().map(BigDecimal::doubleValue).orElse(1.0);
    }

    private Figure main(int i) {
        return figure(i, variant.main());
    }

    private Figure check(int i, int place) {
        return figure(i, place);
    }

    private Figure figure(int i, int place) {
        List<Figure> figures = lines.get(i).figures();
        return place < figures.size() ? figures.get(place) : Figure.NOTHING;
    }
}
