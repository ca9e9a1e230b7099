package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Money;
import stillroom.formulary.quantity.Price;

/** Makes materials out of the rows of a list. */
record MaterialReading(Table table, List<Row> rows, Terms terms) {
    private static final Pattern PAID_FOR = Pattern.compile(
            "(?:/|per|pro|je|por|par|al|\\bfor\\b|,)\\s*(" + Numeral.FORM + ")?\\s*(kg|kilo|g|gr|lb|oz|ml|l)\\b");
    private static final Pattern MONEY = Pattern.compile("(" + Numeral.FORM + ")");

    List<ReadMaterial> read() {
        return rows.stream()
                .filter(row ->
                        row.kind() != RowKind.HEADING && row.kind() != RowKind.TITLE && row.kind() != RowKind.TOTAL)
                .filter(row -> row.kind() != RowKind.LEFT_OUT
                        && row.kind() != RowKind.BLANK
                        && !row.names().isEmpty())
                .filter(row -> hasMore(row) || row.names().size() > 1)
                .map(this::material)
                .toList();
    }

    /** A name with nothing beside it is the heading of a shelf. */
    private boolean hasMore(Row row) {
        return table.columns().stream()
                .filter(column -> !column.meaning().names() && column.meaning() != Meaning.LEFT_OUT)
                .anyMatch(column ->
                        !table.grid().cell(row.place(), column.place()).isBlank());
    }

    private ReadMaterial material(Row row) {
        List<Flag> flags = new ArrayList<>(row.flags());
        flags.addAll(NameDoubts.of(row, "", new java.util.HashSet<>()));
        return new ReadMaterial(
                row.place(),
                table.grid().address(row.place(), table.names().get(0).place()),
                row.names(),
                row.cas(),
                table.text(row.place(), Meaning.FUNCTION),
                table.text(row.place(), Meaning.SUPPLIER),
                price(row, flags),
                stock(row, flags),
                table.text(row.place(), Meaning.LOT),
                day(row, Meaning.RECEIVED, flags),
                day(row, Meaning.EXPIRY, flags),
                table.text(row.place(), Meaning.NOTE),
                flags);
    }

    private Optional<Price> price(Row row, List<Flag> flags) {
        Optional<Column> column = table.column(Meaning.PRICE);
        Cell cell =
                column.map(one -> table.grid().cell(row.place(), one.place())).orElse(Cell.EMPTY);
        if (column.isEmpty() || cell.isBlank()) {
            return Optional.empty();
        }
        Optional<BigDecimal> money = money(cell, flags);
        Optional<Grams> amount =
                paidFor(cell.text()).or(() -> paidFor(column.get().heading()));
        if (money.isEmpty() || money.get().signum() < 0) {
            flags.add(Flag.doubt("\"" + cell.text() + "\" is no price that can be read."));
            return Optional.empty();
        }
        if (amount.isEmpty()) {
            amount = stock(row, new ArrayList<>());
            flags.add(Flag.doubt(
                    amount.isPresent()
                            ? "The sheet does not say for how much the price is; it is taken for the whole amount."
                            : "The sheet does not say for how much the price is, so that it is left out."));
        }
        return amount.filter(grams -> grams.signum() > 0).map(grams -> new Price(new Money(money.get()), grams));
    }

    private Optional<BigDecimal> money(Cell cell, List<Flag> flags) {
        if (cell.number().isPresent()) {
            return cell.number();
        }
        String plain = cell.text().replaceAll("[€$£]|EUR|USD|GBP|CHF", " ").strip();
        Matcher figure = MONEY.matcher(plain);
        Optional<Numeral> numeral = figure.find() ? Numeral.read(figure.group(1), terms.mark()) : Optional.empty();
        numeral.ifPresent(read -> flags.addAll(read.flags()));
        return numeral.map(Numeral::value);
    }

    private Optional<Grams> paidFor(String text) {
        Matcher paid = PAID_FOR.matcher(text.toLowerCase(Locale.ROOT));
        if (!paid.find()) {
            return Optional.empty();
        }
        BigDecimal count = Optional.ofNullable(paid.group(1))
                .flatMap(number -> Numeral.read(number, terms.mark()))
                .map(Numeral::value)
                .orElse(BigDecimal.ONE);
        return UnitWords.of(paid.group(2)).flatMap(Unit::grams).map(grams -> new Grams(grams.multiply(count)));
    }

    private Optional<Grams> stock(Row row, List<Flag> flags) {
        Optional<Column> column = table.column(Meaning.STOCK).or(() -> table.column(Meaning.AMOUNT));
        Cell cell =
                column.map(one -> table.grid().cell(row.place(), one.place())).orElse(Cell.EMPTY);
        if (column.isEmpty() || cell.isBlank()) {
            return Optional.empty();
        }
        Figure figure = FigureReading.read(cell, terms.mark());
        Optional<Unit> unit = figure.unit()
                .or(() -> table.column(Meaning.UNIT)
                        .flatMap(one -> UnitWords.of(
                                table.grid().cell(row.place(), one.place()).text())))
                .or(() -> column.get().unit())
                .or(() -> unitIn(column.get().heading()));
        flags.addAll(figure.flags());
        Optional<BigDecimal> grams = unit.flatMap(Unit::grams);
        if (!figure.isNumber() || figure.middle().signum() < 0 || grams.isEmpty()) {
            flags.add(Flag.doubt(
                    "The amount \"" + cell.text() + "\" has no unit of mass or cannot be read; it is left out."));
            return Optional.empty();
        }
        return Optional.of(new Grams(figure.middle().multiply(grams.get())));
    }

    private static Optional<Unit> unitIn(String heading) {
        Matcher word =
                Pattern.compile("(?<!\\p{L})(kg|g|mg|oz|lb)(?!\\p{L})").matcher(heading.toLowerCase(Locale.ROOT));
        return word.find() ? UnitWords.of(word.group(1)) : Optional.empty();
    }

    private Optional<LocalDate> day(Row row, Meaning meaning, List<Flag> flags) {
        String text = table.text(row.place(), meaning);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Optional<LocalDate> day = Days.of(column(meaning)).read(text, flags);
        if (day.isEmpty()) {
            flags.add(Flag.doubt("\"" + text + "\" is no day that can be read."));
        }
        return day;
    }

    private List<String> column(Meaning meaning) {
        return rows.stream().map(row -> table.text(row.place(), meaning)).toList();
    }
}
