package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a cell of money says.
 *
 * @param basis what it is for, where the cell says so
 * @param currency as it is written, empty where it is not
 */
record MoneyCell(Optional<BigDecimal> value, Basis basis, String currency, List<Flag> flags) {
    static final MoneyCell NOTHING = new MoneyCell(Optional.empty(), Basis.UNSAID, "", List.of());

    private static final Pattern CURRENCY = Pattern.compile(ListWords.CURRENCY);
    private static final Pattern FOR = Pattern.compile(
            "(?:/|\\bper\\b|\\bpro\\b|\\bje\\b|\\bpor\\b|\\bpar\\b|\\bal\\b|\\bau\\b|\\bil\\b|\\ble\\b|\\bdie\\b|\\bfor\\b|\\bfür\\b|\\bpour\\b|\\bpara\\b|\\ba\\b|\\bà\\b|@|\\(|,\\s|\\s-\\s)\\s*(.*)");
    private static final Pattern NUMBER = Pattern.compile(Numeral.FORM);
    private static final Pattern PENCE = Pattern.compile("(" + Numeral.FORM + ")\\s?(p|ct|cents?|c)\\.?");

    MoneyCell {
        flags = List.copyOf(flags);
    }

    static MoneyCell read(Cell cell, Optional<Mark> mark) {
        if (cell.isBlank() || cell.text().matches("[-–—/.?]+|(?i)n\\.?/?a\\.?|tbc|tba")) {
            return NOTHING;
        }
        if (cell.is(Cell.Trait.FAILED) || cell.is(Cell.Trait.DAY)) {
            return unreadable(cell.text());
        }
        if (cell.number().isPresent()) {
            return new MoneyCell(Optional.of(Rounded.clean(cell.number().get())), Basis.UNSAID, "", List.of());
        }
        String text = cell.text()
                .toLowerCase(Locale.ROOT)
                .replaceAll("(?<=\\d)[.,]\\s?[-–—]+", "")
                .strip();
        Matcher sign = CURRENCY.matcher(text);
        String currency = sign.find() ? sign.group() : "";
        String plain = CURRENCY.matcher(text).replaceAll(" ").strip();
        Matcher pence = PENCE.matcher(plain);
        if (currency.isEmpty() && pence.matches()) {
            return money(pence.group(1), "", Basis.UNSAID, mark, cell.text(), BigDecimal.valueOf(100));
        }
        Matcher number = NUMBER.matcher(plain);
        if (!number.find()) {
            return unreadable(cell.text());
        }
        String before = plain.substring(0, number.start()).strip();
        String behind = plain.substring(number.end()).strip();
        return money(number.group(), currency, basis(before, behind), mark, cell.text(), BigDecimal.ONE);
    }

    private static Basis basis(String before, String behind) {
        Matcher paidFor = FOR.matcher(behind);
        if (paidFor.matches()) {
            return ListWords.basis(Folding.of(paidFor.group(1)));
        }
        return before.isEmpty() && behind.isEmpty() ? Basis.UNSAID : ListWords.basis(Folding.of(before + " " + behind));
    }

    private static MoneyCell money(
            String figure, String currency, Basis basis, Optional<Mark> mark, String typed, BigDecimal parts) {
        Optional<Numeral> numeral = Numeral.read(figure, mark);
        if (numeral.isEmpty() || numeral.get().value().signum() < 0) {
            return unreadable(typed);
        }
        return new MoneyCell(
                Optional.of(numeral.get().value().divide(parts, java.math.MathContext.DECIMAL64)),
                basis,
                currency,
                new ArrayList<>(numeral.get().flags()));
    }

    private static MoneyCell unreadable(String text) {
        return new MoneyCell(
                Optional.empty(),
                Basis.UNSAID,
                "",
                List.of(Flag.doubt("\"" + text + "\" is no price that can be read.")));
    }

    boolean isFigure() {
        return value.isPresent();
    }
}
