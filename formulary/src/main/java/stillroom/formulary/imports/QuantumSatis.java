package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillroom.formulary.formula.ReadingKind;

/** The ways of writing "as much as is needed": to a whole, to a reading, or without saying to what. */
final class QuantumSatis {
    private static final String ASKING =
            "(?:q\\.?\\s*s\\.?\\s*p?\\.?|c\\.?\\s*s\\.?\\s*p\\.?|c\\.\\s*s\\.?|q\\.?\\s*b\\.?|s\\.?\\s*q\\.?|c\\.?\\s*b\\.?\\s*p\\.?"
                    + "|quantum satis|quantum sufficit|quantity sufficient|as needed|as required|if needed|nach bedarf|bei bedarf"
                    + "|n\\.\\s*b\\.|selon besoin|quantité suffisante|sufficient|suff\\.?|quanto basta|cantidad suficiente|naar behoefte)";
    private static final String UP_TO =
            "(?:ad|do|till?|to|up to|add to|make up to|fill (?:up )?to|top up to|auf|auffüllen auf|auff\\. auf|bis|à|a|hasta|jusqu'à|pour|para|per|fino a|tot|->|→|=)";
    private static final Pattern ASKED = Pattern.compile("(?<![\\p{L}])" + ASKING + "(?![\\p{L}])");
    private static final Pattern WHOLE = Pattern.compile("(?:" + ASKING + "[\\s,:]*)?" + UP_TO + "\\s*(?:make\\s*)?("
            + Numeral.FORM + ")\\s*(%|g|gr|grams?|gramm|kg|ml|parts?|teile)?[\\s.*]*");
    private static final Pattern WHOLE_BARE = Pattern.compile(ASKING + "[\\s,:]*(?:(100(?:[.,]0+)?)\\s*(%|g|gr|ml)?|("
            + Numeral.FORM + ")\\s*(g|gr|grams?|gramm|kg|ml))[\\s.*]*");
    private static final Pattern REST = Pattern.compile(
            "(?:to |the |ad |q\\.?\\s?s\\.? ?(?:to )?)?(?:balance|bal\\.?|rest|reste|resto|remainder|remaining|restant|ad|up to 100|to make up|ad infinitum)(?: to 100.*| zu 100.*| water)?[\\s.*]*");
    private static final Pattern FIGURE = Pattern.compile("(" + Numeral.FORM + ")\\s*(%|g|gr|kg|mg)?(?![\\d.,])");
    private static final Pattern PH = Pattern.compile("(?<![\\p{L}])ph(?![\\p{L}])");

    private QuantumSatis() {}

    /** @param text in lower case */
    static Figure read(String text, Optional<Mark> mark) {
        if (text.matches("ph\\.?\\s*:?")) {
            return Figure.NOTHING;
        }
        if (PH.matcher(text).find()) {
            return toReading(ReadingKind.PH, text);
        }
        Matcher whole = WHOLE.matcher(text);
        if (whole.matches()) {
            return toWhole(whole, text, mark);
        }
        Matcher bare = WHOLE_BARE.matcher(text);
        if (bare.matches() && bare.group(3) != null) {
            return new Figure(
                    Figure.Kind.TO_WHOLE,
                    Numeral.read(bare.group(3), mark).map(Numeral::value),
                    Optional.empty(),
                    UnitWords.of(bare.group(4)),
                    Optional.empty(),
                    List.of());
        }
        if (bare.matches() || REST.matcher(text).matches()) {
            return Figure.of(Figure.Kind.TO_WHOLE);
        }
        return ASKED.matcher(text).find() ? asked(text, mark) : Figure.NOTHING;
    }

    private static Figure toWhole(Matcher whole, String text, Optional<Mark> mark) {
        Optional<BigDecimal> figure = Numeral.read(whole.group(1), mark).map(Numeral::value);
        Optional<Unit> unit = Optional.ofNullable(whole.group(2)).flatMap(UnitWords::of);
        boolean hundred = figure.isPresent() && figure.get().compareTo(BigDecimal.valueOf(100)) == 0;
        boolean names = text.matches("(?s).*" + ASKING + ".*|.*(ad|make|top|fill|auf).*");
        if (!hundred && !names && unit.map(Unit::isShare).orElse(true)) {
            // "up to 1 %" is an upper bound, no rest.
            return Figure.NOTHING;
        }
        return new Figure(Figure.Kind.TO_WHOLE, figure, Optional.empty(), unit, Optional.empty(), List.of());
    }

    private static Figure asked(String text, Optional<Mark> mark) {
        if (text.matches(".*(viscos|visko|thick|konsistenz|consist).*")) {
            return toReading(ReadingKind.VISCOSITY, text);
        }
        if (text.matches(".*(colou?r|farbe|shade|couleur|tint).*")) {
            return toReading(ReadingKind.SHADE, text);
        }
        if (text.matches(".*(scent|duft|odou?r|smell|parfum).*")) {
            return toReading(ReadingKind.ODOUR, text);
        }
        for (ReadingKind kind : ReadingKind.values()) {
            if (text.contains("to " + kind.name().toLowerCase(java.util.Locale.ROOT))) {
                return toReading(kind, text);
            }
        }
        if (text.matches(
                ".*q\\.?\\s*s\\.?\\s*p\\.?(?![\\p{L}]).*|.*c\\.?\\s*s\\.?\\s*p\\.?(?![\\p{L}]).*|.*c\\.?\\s*b\\.?\\s*p\\.?(?![\\p{L}]).*")) {
            return Figure.of(Figure.Kind.TO_WHOLE);
        }
        return expected(ASKED.matcher(text).replaceAll(" "), mark);
    }

    /** "72.3 (q.s.)": the amount that is expected stands beside. */
    private static Figure expected(String rest, Optional<Mark> mark) {
        Matcher figure = FIGURE.matcher(rest);
        Optional<BigDecimal> value =
                figure.find() ? Numeral.read(figure.group(1), mark).map(Numeral::value) : Optional.empty();
        Optional<Unit> unit =
                value.isPresent() ? Optional.ofNullable(figure.group(2)).flatMap(UnitWords::of) : Optional.empty();
        return new Figure(Figure.Kind.AS_NEEDED, value, Optional.empty(), unit, Optional.empty(), List.of());
    }

    private static Figure toReading(ReadingKind kind, String text) {
        boolean lone = text.matches("ph\\s*[=:]?\\s*\\d.*");
        Matcher figure =
                Pattern.compile("^(" + Numeral.FORM + ")\\s*(%|g)?[\\s,;(]").matcher(text);
        Optional<BigDecimal> value =
                figure.find() ? Numeral.read(figure.group(1), Optional.empty()).map(Numeral::value) : Optional.empty();
        Optional<Unit> unit =
                value.isPresent() ? Optional.ofNullable(figure.group(2)).flatMap(UnitWords::of) : Optional.empty();
        Figure read = new Figure(Figure.Kind.TO_READING, value, Optional.empty(), unit, Optional.of(kind), List.of());
        return lone ? read.with(Flag.note("Read as: as much as brings it to that pH.")) : read;
    }
}
