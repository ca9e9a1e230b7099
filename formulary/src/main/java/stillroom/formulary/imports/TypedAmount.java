package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

/** The amount of a line as the maker types and reads it: per cent, "q.s. to 100", "q.s. to pH". */
public final class TypedAmount {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private TypedAmount() {}

    /** The amount that was typed; empty where it is none. A bare "q.s." is q.s. to 100. */
    public static Optional<Amount> read(String typed) {
        Figure figure = FigureReading.text(typed.strip(), Optional.empty());
        boolean percent = figure.unit().map(unit -> unit == Unit.PERCENT).orElse(true);
        return switch (figure.kind()) {
            case EXACT -> percent ? fixed(figure.middle()) : Optional.empty();
            case TO_WHOLE, AS_NEEDED -> Optional.of(new Amount.ToHundred());
            case TO_READING -> reading(figure);
            case RANGE, UNREADABLE, NONE -> Optional.empty();
        };
    }

    private static Optional<Amount> fixed(BigDecimal figure) {
        return figure.signum() < 0 || figure.compareTo(HUNDRED) > 0
                ? Optional.empty()
                : Optional.of(new Amount.Fixed(new Percent(figure)));
    }

    private static Optional<Amount> reading(Figure figure) {
        return fixed(figure.value().orElse(BigDecimal.ZERO)).map(amount -> {
            Percent percent = ((Amount.Fixed) amount).percent();
            return new Amount.ToReading(
                    figure.reading().orElse(ReadingKind.OTHER), percent, new PercentRange(percent, percent));
        });
    }

    /** An amount in a form that {@link #read} reads back. */
    public static String write(Amount amount) {
        return amount.match(
                fixed -> fixed.percent().toString(),
                () -> "q.s. to 100",
                reading -> (reading.expected().isZero() ? "" : reading.expected() + " ") + "q.s. to "
                        + words(reading.reading()));
    }

    private static String words(ReadingKind kind) {
        return kind == ReadingKind.PH ? "pH" : kind.name().toLowerCase(Locale.ROOT);
    }
}
