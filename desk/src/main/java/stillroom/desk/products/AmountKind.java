package stillroom.desk.products;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import stillroom.desk.shell.Choice;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.ReadingKind;

/** How the amount of a line is meant, as one choice. */
public enum AmountKind {
    FIXED("as stated", null),
    TO_HUNDRED("q.s. to 100", null),
    PH("q.s. to pH", ReadingKind.PH),
    VISCOSITY("q.s. to viscosity", ReadingKind.VISCOSITY),
    SHADE("q.s. to shade", ReadingKind.SHADE),
    ODOUR("q.s. to odour", ReadingKind.ODOUR),
    APPEARANCE("q.s. to appearance", ReadingKind.APPEARANCE),
    TEMPERATURE("q.s. to temperature", ReadingKind.TEMPERATURE),
    DENSITY("q.s. to density", ReadingKind.DENSITY),
    OTHER("q.s. to another reading", ReadingKind.OTHER);

    /** What a person may type into the amount itself for "q.s. to 100". */
    private static final Pattern TYPED_QS = Pattern.compile("(?i)q\\.?\\s*s\\.?(\\s*(to|ad)?\\s*100\\s*%?)?");

    private final String words;
    private final Optional<ReadingKind> reading;

    AmountKind(String words, @org.jspecify.annotations.Nullable ReadingKind reading) {
        this.words = words;
        this.reading = Optional.ofNullable(reading);
    }

    public String words() {
        return words;
    }

    Optional<ReadingKind> reading() {
        return reading;
    }

    static AmountKind of(Amount amount) {
        return amount.match(
                fixed -> FIXED,
                () -> TO_HUNDRED,
                reading -> Arrays.stream(values())
                        .filter(kind ->
                                kind.reading.filter(reading.reading()::equals).isPresent())
                        .findFirst()
                        .orElse(OTHER));
    }

    /** The kind that a field names; "q.s." typed as an amount means q.s. to 100 whatever the field says. */
    static AmountKind read(String chosen, String amount) {
        if (TYPED_QS.matcher(amount.strip()).matches()) {
            return TO_HUNDRED;
        }
        return Arrays.stream(values())
                .filter(kind -> kind.name().equals(chosen))
                .findFirst()
                .orElse(FIXED);
    }

    /** The kinds to choose from: the usual ones, and the line's own where it is another. */
    public static List<Choice> choices(AmountKind own) {
        List<AmountKind> kinds = new ArrayList<>(List.of(FIXED, TO_HUNDRED, PH, VISCOSITY, SHADE, OTHER));
        if (!kinds.contains(own)) {
            kinds.add(own);
        }
        return kinds.stream().map(kind -> new Choice(kind.name(), kind.words)).toList();
    }
}
