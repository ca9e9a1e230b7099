package stillroom.formulary.imports;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Name and amount in one cell, as in "Glycerin 5 %", "Aqua q.s. to 100" or "5 g glycerin".
 *
 * @param sure whether a unit, a colon or a q.s. parts the two
 */
record InlineAmount(String name, Figure figure, boolean sure) {
    private static final String UNIT =
            "(?:%|‰|g|gr|grams?|gramm|mg|kg|oz|parts?|teile|ml|cl|dl|drops?|tropfen|trpf\\.?|gouttes?|gotas|gocce|tsp|tbsp|teaspoons?|tablespoons?|el|tl|essl[oö]ffel|teel[oö]ffel|c\\. à [sc]\\.|cuill[eè]res?|cucchiai(?:ni)?|cucharad(?:it)?as?|cups?|tassen?|pumps?)(?![\\p{L}])";
    private static final String PARTING = "\\s*(?:[:=,;]|\\s[-–—]\\s|\\.{3,}|\\s|\\t|\\()\\s*";
    private static final String END = "\\s*" + UNIT + "(?:\\s?[wm]/[wm])?)\\)?\\.?\\**";
    private static final Pattern RANGE_BEHIND = Pattern.compile("(?i)(.*\\p{L}[^:=]*?)" + PARTING + "(" + Numeral.FORM
            + "(?:\\s*" + UNIT + ")?\\s?(?:-|–|to|bis)\\s?" + Numeral.FORM + END);
    private static final Pattern BEHIND =
            Pattern.compile("(?i)(.*\\p{L}[^:=]*?)" + PARTING + "((?:ca\\.? |~)?" + Numeral.FORM + END);
    private static final Pattern BEFORE = Pattern.compile("(?i)[-•*]?\\s*(" + Numeral.FORM + "\\s*" + UNIT
            + ")(?:\\s+(?:of\\s+|d[’']|de\\s+|di\\s+|von\\s+|van\\s+)?|\\s*[-–:]\\s*)(.*\\p{L}.*)");
    /** A broken number only of spoons and the like: "1/2 tsp vitamin E". */
    private static final Pattern BROKEN = Pattern.compile(
            "(?i)[-•*]?\\s*((?:\\d+\\s+)?\\d/\\d|\\d*\\s?[½¼¾⅓⅔])\\s*(" + UNIT + ")\\s+(?:of\\s+)?(.*\\p{L}.*)");

    private static final Pattern PARTED =
            Pattern.compile("(.*\\p{L}.*?)\\s*(?:[:=]|\\s[-–—]\\s|\\.{3,}|\\t)\\s*(" + Numeral.FORM + ")");
    private static final Pattern BARE = Pattern.compile("(.*\\p{L}.*?)\\s+(" + Numeral.FORM + ")");
    private static final Pattern BARE_BEFORE = Pattern.compile("(" + Numeral.FORM + ")\\s+(\\p{L}.*)");
    private static final Pattern ASKED = Pattern.compile(
            "(?i)(.*?\\p{L}.*?)[\\s,:;(–-]+((?:q\\.?\\s?s\\.?p?\\.?|qsp|csp|c\\.s\\.p\\.?|q\\.b\\.|ad|to|up to|balance|rest|as needed|nach bedarf)(?![\\p{L}])[^)]*)\\)?");

    static Optional<InlineAmount> read(String text, Optional<Mark> mark) {
        return parted(RANGE_BEHIND, text, 1, mark, true)
                .or(() -> twice(text, mark))
                .or(() -> parted(BEHIND, text, 1, mark, true))
                .or(() -> parted(BEFORE, text, 2, mark, true))
                .or(() -> broken(text))
                .or(() -> asked(text, mark))
                .or(() -> parted(PARTED, text, 1, mark, true))
                .or(() -> parted(BARE, text, 1, mark, false))
                .or(() -> parted(BARE_BEFORE, text, 2, mark, false));
    }

    /** "2 g preservative (1 %)": what stands first counts, and a mass behind it as well is doubtful. */
    private static Optional<InlineAmount> twice(String text, Optional<Mark> mark) {
        Optional<InlineAmount> before = parted(BEFORE, text, 2, mark, true);
        Optional<InlineAmount> behind = parted(BEHIND, text, 1, mark, true);
        boolean both = before.isPresent() && behind.isPresent();
        if (!both || behind.get().name().matches("[\\d.,]*\\s*")) {
            return Optional.empty();
        }
        boolean share = behind.get().figure().unit().map(Unit::isShare).orElse(true);
        return share
                ? before
                : before.map(one -> new InlineAmount(
                        one.name(),
                        one.figure().with(Flag.doubt("\"" + text + "\" holds two amounts; the first is taken.")),
                        true));
    }

    private static Optional<InlineAmount> parted(
            Pattern form, String text, int nameAt, Optional<Mark> mark, boolean sure) {
        Matcher parted = form.matcher(text.strip());
        if (!parted.matches()) {
            return Optional.empty();
        }
        Figure figure = FigureReading.text(parted.group(3 - nameAt), mark);
        return figure.isAmount() && isName(parted.group(nameAt))
                ? Optional.of(new InlineAmount(parted.group(nameAt).strip(), figure, sure))
                : Optional.empty();
    }

    /** No unit, and no bracket left open: "bar (makes 300 g)" names no ingredient. */
    private static boolean isName(String text) {
        long open = text.chars().filter(sign -> sign == '(').count();
        long closed = text.chars().filter(sign -> sign == ')').count();
        return open == closed && UnitWords.of(text).isEmpty();
    }

    private static Optional<InlineAmount> broken(String text) {
        Matcher broken = BROKEN.matcher(text.strip());
        if (!broken.matches()) {
            return Optional.empty();
        }
        Optional<Unit> unit = UnitWords.of(broken.group(2));
        Figure figure = unit.filter(one -> one == Unit.VOLUME).isPresent()
                ? Figure.exact(java.math.BigDecimal.ONE).in(unit)
                : Figure.of(Figure.Kind.UNREADABLE);
        return Optional.of(new InlineAmount(broken.group(3).strip(), figure, true));
    }

    private static Optional<InlineAmount> asked(String text, Optional<Mark> mark) {
        Matcher asked = ASKED.matcher(text.strip());
        if (!asked.matches()) {
            return Optional.empty();
        }
        Figure figure = QuantumSatis.read(asked.group(2).strip().toLowerCase(Locale.ROOT), mark);
        return figure.isAmount()
                ? Optional.of(new InlineAmount(asked.group(1).strip(), figure, true))
                : Optional.empty();
    }
}
