package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

/** Makes the amounts of a formula out of what its cells say and what share that is. */
final class Amounts {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal FULL = new BigDecimal("99.95");

    private final List<Row> lines;
    private final List<Figure> figures;
    private final List<Optional<BigDecimal>> percents;
    private final List<Optional<Amount>> amounts = new ArrayList<>();
    private final List<List<Flag>> flags = new ArrayList<>();

    private Amounts(List<Row> lines, List<Figure> figures, List<Optional<BigDecimal>> percents) {
        this.lines = lines;
        this.figures = figures;
        this.percents = percents;
    }

    /** @param flags one list for each line */
    record Made(List<Optional<Amount>> amounts, List<List<Flag>> flags) {}

    static Made of(List<Row> lines, List<Figure> figures, List<Optional<BigDecimal>> percents) {
        Amounts made = new Amounts(lines, figures, percents);
        int rest = made.restLine();
        for (int i = 0; i < lines.size(); i++) {
            List<Flag> said = new ArrayList<>();
            made.amounts.add(made.amount(i, i == rest, said));
            made.flags.add(said);
        }
        return new Made(made.amounts, made.flags);
    }

    /** The line that takes what is left: the one that says so, else water that says q.s., else the only q.s. */
    private int restLine() {
        for (int i = 0; i < figures.size(); i++) {
            if (figures.get(i).kind() == Figure.Kind.TO_WHOLE) {
                return i;
            }
        }
        List<Integer> asking = new ArrayList<>();
        for (int i = 0; i < figures.size(); i++) {
            if (figures.get(i).kind() == Figure.Kind.AS_NEEDED) {
                asking.add(i);
            }
        }
        Optional<Integer> water = asking.stream()
                .filter(i -> Adjuster.isWater(lines.get(i).names()))
                .findFirst();
        boolean room = sum().compareTo(FULL) < 0;
        boolean only = asking.size() == 1
                && !Adjuster.isAdjuster(lines.get(asking.get(0)).names());
        return water.filter(i -> room || figures.get(i).value().isPresent()).orElse(only && room ? asking.get(0) : -1);
    }

    private BigDecimal sum() {
        BigDecimal sum = BigDecimal.ZERO;
        for (int i = 0; i < figures.size(); i++) {
            sum = sum.add(figures.get(i).isNumber() ? percents.get(i).orElse(BigDecimal.ZERO) : BigDecimal.ZERO);
        }
        return sum;
    }

    private Optional<Amount> amount(int i, boolean rest, List<Flag> said) {
        Figure figure = figures.get(i);
        return switch (figure.kind()) {
            case EXACT, RANGE -> fixed(i, said);
            case TO_WHOLE -> rest ? Optional.of(new Amount.ToHundred()) : twice(said);
            case TO_READING -> reading(i, figure.reading().orElse(ReadingKind.OTHER), said);
            case AS_NEEDED -> asNeeded(i, rest, said);
            case UNREADABLE, NONE -> missing(figure, said);
        };
    }

    private static Optional<Amount> missing(Figure figure, List<Flag> said) {
        if (figure.flags().stream().noneMatch(Flag::doubtful)) {
            said.add(Flag.doubt("There is no amount."));
        }
        return Optional.empty();
    }

    private static Optional<Amount> twice(List<Flag> said) {
        said.add(Flag.doubt("Another line already takes what is left to 100."));
        return Optional.empty();
    }

    private Optional<Amount> fixed(int i, List<Flag> said) {
        Optional<BigDecimal> percent = percents.get(i);
        if (percent.isEmpty()) {
            return Optional.empty();
        }
        if (percent.get().signum() < 0 || percent.get().compareTo(HUNDRED) > 0) {
            said.add(Flag.doubt("This comes to " + Shares.plain(percent.get()) + " %, which no line can be."));
            return Optional.empty();
        }
        if (percent.get().signum() == 0) {
            said.add(Flag.doubt("The sheet says 0."));
        }
        return Optional.of(new Amount.Fixed(new Percent(percent.get())));
    }

    private Optional<Amount> asNeeded(int i, boolean rest, List<Flag> said) {
        List<String> names = lines.get(i).names();
        if (rest) {
            String sentence = "\"q.s.\" is taken as q.s. to 100.";
            said.add(Adjuster.isWater(names) ? Flag.note(sentence) : Flag.doubt(sentence));
            return Optional.of(new Amount.ToHundred());
        }
        return reading(i, Adjuster.kind(names), said);
    }

    private Optional<Amount> reading(int i, ReadingKind kind, List<Flag> said) {
        BigDecimal expected = percents.get(i).orElse(BigDecimal.ZERO);
        if (expected.signum() < 0 || expected.compareTo(HUNDRED) > 0) {
            said.add(Flag.doubt("The expected amount is no percentage from 0 to 100."));
            expected = BigDecimal.ZERO;
        }
        Percent percent = new Percent(expected);
        said.add(Flag.doubt(
                expected.signum() == 0
                        ? "Added as needed: how much is expected, the sheet does not say."
                        : "Added as needed: between how much and how much, the sheet does not say."));
        return Optional.of(new Amount.ToReading(kind, percent, new PercentRange(percent, percent)));
    }
}
