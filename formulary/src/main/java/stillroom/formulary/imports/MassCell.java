package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a cell of stock or of a pack says.
 *
 * @param value the figure
 * @param unit where the cell names one
 * @param pieces whether it counts pieces, which are no mass
 */
record MassCell(Optional<BigDecimal> value, Optional<Unit> unit, boolean pieces, List<Flag> flags) {
    static final MassCell NOTHING = new MassCell(Optional.empty(), Optional.empty(), false, List.of());

    private static final String WORD = "(kgs?|kilos?|g|gr|gms?|grams?|gramm|grammes?|gramos|grammi|mg|oz|ounces?|lbs?)";
    private static final Pattern MASS = Pattern.compile(
            "(?:(\\d{1,3})\\s?[x×*]\\s?)?(?<![\\p{L}\\d.,])(" + Numeral.FORM + ")\\s?" + WORD + "\\.?(?!\\p{L})");
    private static final Pattern PIECES = Pattern.compile(
            "(" + Numeral.FORM
                    + ")?\\s*(pcs?|pieces?|stk|stuck|stück|st|pi[eè]ces?|uds?|unidades|pz|pezzi|units?|stuks?|ea|each|bottles?|jars?|rolls?|sheets?)\\.?");
    private static final Pattern EMPTY = Pattern.compile(
            "none|nil|nothing|keine?s?|nichts|aucune?|rien|nada|ninguno|niente|nessuno|geen|niets|empty|leer|vide|vac[ií]o|vuoto|leeg|out( of stock)?|all gone|gone|aufgebraucht|[eé]puis[eé]|"
                    + "agotado|esaurito|finito|used up|alle|rupture|none left|finished|uitverkocht|op");
    private static final Pattern ABOUT = Pattern.compile(
            "(~|≈|\\bca\\.?\\b|\\bcirca\\b|\\bapprox|\\babout\\b|\\betwa\\b|\\benv\\.?\\b|\\benviron\\b|\\bungefähr\\b|<|>|≤|≥|\\bunder\\b|\\bunter\\b|\\bover\\b|\\?).*");

    MassCell {
        flags = List.copyOf(flags);
    }

    static MassCell read(Cell cell, Optional<Mark> mark) {
        if (cell.isBlank() || cell.text().matches("[-–—/.]+|(?i)n\\.?/?a\\.?|\\?+")) {
            return NOTHING;
        }
        if (cell.is(Cell.Trait.FAILED) || cell.is(Cell.Trait.DAY)) {
            return unreadable(cell.text());
        }
        if (cell.number().isPresent()) {
            return new MassCell(Optional.of(Rounded.clean(cell.number().get())), Optional.empty(), false, List.of());
        }
        String text = cell.text().toLowerCase(Locale.ROOT).strip();
        if (EMPTY.matcher(text).matches()) {
            return new MassCell(
                    Optional.of(BigDecimal.ZERO),
                    Optional.of(Unit.GRAM),
                    false,
                    List.of(Flag.doubt("\"" + cell.text() + "\" is taken as nothing on the shelf.")));
        }
        Matcher pieces = PIECES.matcher(text);
        if (pieces.matches()) {
            return new MassCell(
                    Optional.ofNullable(pieces.group(1))
                            .flatMap(figure -> Numeral.read(figure, mark))
                            .map(Numeral::value),
                    Optional.empty(),
                    true,
                    List.of());
        }
        Figure figure = FigureReading.text(text, mark);
        if (figure.isNumber()) {
            return new MassCell(Optional.of(figure.middle()), figure.unit(), false, figure.flags());
        }
        return within(cell.text(), text, mark);
    }

    /** A mass among other words, as in "25 kg drum" or "2 x 500 g". */
    private static MassCell within(String typed, String text, Optional<Mark> mark) {
        List<MatchResult> masses = MASS.matcher(text).results().toList();
        if (masses.isEmpty()) {
            return unreadable(typed);
        }
        boolean added = masses.size() > 1 && text.replaceAll(MASS.pattern(), "").matches("[\\s+&]*|\\s*\\+\\s*");
        List<Flag> flags = new ArrayList<>();
        BigDecimal grams = BigDecimal.ZERO;
        for (MatchResult mass : added ? masses : masses.subList(0, 1)) {
            Optional<Numeral> numeral = Numeral.read(mass.group(2), mark);
            Optional<BigDecimal> unit = UnitWords.of(mass.group(3).startsWith("kilo") ? "kg" : mass.group(3))
                    .flatMap(Unit::grams);
            if (numeral.isEmpty() || unit.isEmpty()) {
                return unreadable(typed);
            }
            flags.addAll(numeral.get().flags());
            BigDecimal times = mass.group(1) == null ? BigDecimal.ONE : new BigDecimal(mass.group(1));
            grams = grams.add(numeral.get().value().multiply(unit.get()).multiply(times));
        }
        if (masses.size() > 1 && !added) {
            flags.add(Flag.doubt("\"" + typed + "\" names more than one amount; the first is taken."));
        }
        if (ABOUT.matcher(text).find()) {
            flags.add(Flag.doubt("\"" + typed + "\" says that it is about so much."));
        }
        return new MassCell(Optional.of(grams), Optional.of(Unit.GRAM), false, flags);
    }

    private static MassCell unreadable(String text) {
        return new MassCell(
                Optional.empty(),
                Optional.empty(),
                false,
                List.of(Flag.doubt("The amount \"" + text + "\" cannot be read; it is left out.")));
    }

    boolean isFigure() {
        return value.isPresent();
    }
}
