package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the cell of an amount: a figure, a range, one of the two kinds of q.s., with a unit or without. */
final class FigureReading {
    private static final String UNIT =
            "\\s*(%|‰|[\\p{L}µ]+\\.?(?:\\s*[-/(]?\\s*(?:%|[wvm]/[wvm])\\)?)?|% ?\\(?[wm]/[wm]\\)?|vol\\.?-?\\s?%)?";
    private static final Pattern ONE = Pattern.compile("(" + Numeral.FORM + ")" + UNIT);
    private static final Pattern RANGE = Pattern.compile("(" + Numeral.FORM + ")" + UNIT
            + "\\s*(?:-|–|—|\\.\\.\\.?|…|~|to|bis|à|a|until|up to)\\s*(" + Numeral.FORM + ")" + UNIT);
    private static final Pattern AT_MOST = Pattern.compile(
            "(?:<=?|≤|max\\.?|maximum|maximal|up to|bis zu|bis|jusqu'à|hasta|fino a)\\s*(" + Numeral.FORM + ")" + UNIT);
    /** The same amount in another unit in brackets, as in "5 % (10 g)". */
    private static final Pattern TWICE = Pattern.compile("([^(]+)\\(\\s*=?\\s*([^()]+)\\)");

    private static final Pattern ABOUT =
            Pattern.compile("^(?:~|≈|ca\\.?|circa|approx\\.?|about|around|etwa|env\\.?|environ)\\s*");
    private static final Pattern FOOTNOTE = Pattern.compile(
            "\\s*(?:[*†‡§#]+|[¹²³⁴-⁹⁰]+|\\[[^\\]]{1,3}\\]|\\((?:\\d|[a-z]|\\*+|i+)\\)|[*†‡§]+\\s*\\)?)$");

    private FigureReading() {}

    static Figure read(Cell cell, Optional<Mark> mark) {
        if (cell.is(Cell.Trait.MERGED) || cell.isBlank()) {
            return Figure.NOTHING;
        }
        if (cell.is(Cell.Trait.FAILED)) {
            return Figure.of(Figure.Kind.UNREADABLE)
                    .with(Flag.doubt("The spreadsheet could not compute this cell; it says \"" + cell.text() + "\"."));
        }
        if (cell.text().matches("[-–—/.]+|(?i)n\\.?/?a\\.?|none|nil|keine?s?|aucun")) {
            return Figure.NOTHING;
        }
        Figure figure = cell.number().isPresent() ? number(cell, cell.number().get()) : text(cell.text(), mark);
        return cell.is(Cell.Trait.COMPUTED)
                ? figure.with(Flag.note("Computed by the spreadsheet; its last saved value is taken."))
                : figure;
    }

    private static Figure number(Cell cell, BigDecimal value) {
        if (cell.is(Cell.Trait.DAY)) {
            return Figure.of(Figure.Kind.UNREADABLE)
                    .with(Flag.doubt("The spreadsheet took this for a day (" + cell.text()
                            + "); it was perhaps typed as a range."));
        }
        BigDecimal clean = value.round(new MathContext(12)).stripTrailingZeros();
        return cell.is(Cell.Trait.SHOWN_AS_PERCENT)
                ? Figure.exact(clean.movePointRight(2)).in(Optional.of(Unit.PERCENT))
                : Figure.exact(clean);
    }

    private static final Pattern SIMPLE = Pattern.compile("\\d{1,4}(?:[.,]\\d{1,2})?");
    /** A numbered step of the work is no amount. */
    private static final Pattern STEP = Pattern.compile("\\d{1,2}[.)]\\s+\\p{L}{2,}.{6,}");

    /** As in data sheets: ">= 10 - < 20". */
    private static final Pattern BOUNDS =
            Pattern.compile("[>≥]=?\\s*" + Numeral.FORM + "\\s*%?\\s*-\\s*[<≤]=?\\s*" + Numeral.FORM + "\\s*%?");

    private static final String BY_WEIGHT = "(?:\\s*(?:%|‰|mg|kg|g|gr|grams?|gramm)(?![\\p{L}]))?";
    private static final Pattern REMARK = Pattern.compile("(" + Numeral.FORM + BY_WEIGHT + ")[;,]?\\s+\\(?\\p{L}.*|("
            + Numeral.FORM + BY_WEIGHT + ")\\s*\\([^()]*\\p{L}[^()]*\\)");
    private static final Pattern SOMETHING_HUNDRED = Pattern.compile(
            "(?!max|bis|hasta|unter|under|below|less)\\p{L}[\\p{L}.: ]{0,15}\\s100(?:[.,]0+)?\\s*[%g]?");

    /** The cell of a column of amounts, where words may stand behind the figure, or before 100. */
    static Figure leniently(Cell cell, Optional<Mark> mark) {
        Figure strict = read(cell, mark);
        if (strict.kind() != Figure.Kind.UNREADABLE || cell.number().isPresent()) {
            return strict;
        }
        String text = cell.text().toLowerCase(Locale.ROOT).strip();
        if (SOMETHING_HUNDRED.matcher(text).matches()) {
            return Figure.of(Figure.Kind.TO_WHOLE).with(Flag.doubt("\"" + cell.text() + "\" is taken as q.s. to 100."));
        }
        Matcher remark = REMARK.matcher(text);
        if (!remark.matches() || STEP.matcher(text).matches() || Talk.is(text)) {
            return strict;
        }
        Figure figure = plain(
                remark.group(1) != null
                        ? remark.group(1).strip()
                        : remark.group(2).strip(),
                mark);
        return figure.isNumber()
                ? figure.with(Flag.doubt("Words stand behind the figure: \"" + cell.text() + "\"."))
                : strict;
    }

    static Figure text(String typed, Optional<Mark> mark) {
        String text =
                typed.replace('−', '-').replace('–', '-').replace('—', '-').strip();
        if (SIMPLE.matcher(text).matches()) {
            return plain(text, mark);
        }
        if (text.chars().noneMatch(Character::isDigit)) {
            Figure asked = QuantumSatis.read(text.toLowerCase(Locale.ROOT), mark);
            return asked.isAmount() ? asked : unreadable(typed);
        }
        if (STEP.matcher(text).matches() || text.length() > 20 && Talk.is(text)) {
            return Figure.of(Figure.Kind.UNREADABLE);
        }
        if (BOUNDS.matcher(text).matches()) {
            text = text.replaceAll("[<>≤≥]=?\\s*", "");
        }
        Figure asked = QuantumSatis.read(text.toLowerCase(Locale.ROOT), mark);
        if (asked.isAmount()) {
            return asked;
        }
        List<Flag> flags = new ArrayList<>();
        String plain = withoutFootnote(text, flags);
        Matcher about = ABOUT.matcher(plain.toLowerCase(Locale.ROOT));
        if (about.find()) {
            flags.add(Flag.doubt("\"" + typed + "\" says that it is about so much."));
            plain = plain.substring(about.end());
        }
        Figure read = plain(plain.toLowerCase(Locale.ROOT), mark);
        for (Flag flag : flags) {
            read = read.with(flag);
        }
        return read.kind() == Figure.Kind.UNREADABLE
                ? read.with(Flag.doubt("\"" + typed + "\" is no amount that can be read."))
                : read;
    }

    private static Figure unreadable(String typed) {
        return Figure.of(Figure.Kind.UNREADABLE).with(Flag.doubt("\"" + typed + "\" is no amount that can be read."));
    }

    private static String withoutFootnote(String text, List<Flag> flags) {
        Matcher mark = FOOTNOTE.matcher(text);
        if (!mark.find() || mark.start() == 0) {
            return text;
        }
        boolean raised = mark.group().matches("\\s*[¹²³⁴-⁹⁰]+");
        String said = "The mark \"" + mark.group().strip() + "\" behind the figure is taken for a footnote.";
        flags.add(raised ? Flag.doubt(said) : Flag.note(said));
        return text.substring(0, mark.start()).strip();
    }

    private static Figure plain(String text, Optional<Mark> mark) {
        Matcher twice = TWICE.matcher(text);
        if (twice.matches()) {
            Figure first = plain(twice.group(1).strip(), mark);
            Figure second = plain(twice.group(2).strip(), mark);
            return first.isNumber() && second.isNumber() && second.unit().isPresent()
                    ? first
                    : Figure.of(Figure.Kind.UNREADABLE);
        }
        Matcher one = ONE.matcher(text);
        if (one.matches()) {
            return exact(one.group(1), one.group(2), mark);
        }
        Matcher most = AT_MOST.matcher(text);
        if (most.matches()) {
            return atMost(text, exact(most.group(1), most.group(2), mark));
        }
        Matcher range = RANGE.matcher(text);
        if (range.matches()) {
            Figure low = exact(range.group(1), range.group(2), mark);
            Figure high = exact(range.group(3), range.group(4), mark);
            return between(text, low, high);
        }
        return Figure.of(Figure.Kind.UNREADABLE);
    }

    private static Figure exact(String number, @org.jspecify.annotations.Nullable String unit, Optional<Mark> mark) {
        Optional<Numeral> numeral = Numeral.read(number, mark);
        String said = unit == null ? "" : unit;
        boolean named = !said.isBlank();
        Optional<Unit> known = named ? UnitWords.of(said) : Optional.empty();
        if (numeral.isEmpty() || (named && known.isEmpty())) {
            return Figure.of(Figure.Kind.UNREADABLE);
        }
        Figure figure = Figure.exact(numeral.get().value()).in(known);
        for (Flag flag : numeral.get().flags()) {
            figure = figure.with(flag);
        }
        return figure;
    }

    private static Figure atMost(String text, Figure high) {
        return high.kind() == Figure.Kind.EXACT ? between(text, Figure.exact(BigDecimal.ZERO), high) : high;
    }

    private static Figure between(String text, Figure low, Figure high) {
        if (low.value().isEmpty()
                || high.value().isEmpty()
                || low.value().get().compareTo(high.value().get()) > 0) {
            return Figure.of(Figure.Kind.UNREADABLE);
        }
        List<Flag> flags = new ArrayList<>(low.flags());
        flags.addAll(high.flags());
        flags.add(Flag.doubt("The sheet gives a range (" + text + "); the middle of it is taken."));
        Optional<Unit> unit = high.unit().or(low::unit);
        return new Figure(Figure.Kind.RANGE, low.value(), high.value(), unit, Optional.empty(), flags);
    }
}
