package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Money;
import stillroom.formulary.quantity.Price;

/** Makes materials out of the rows of a list. */
final class MaterialReading {
    private final ListTable table;
    private final ListChoice choice;
    private final ListCells cells;
    private final String currency;
    private final Set<String> seen = new HashSet<>();

    MaterialReading(ListTable table, ListChoice choice) {
        this.table = table;
        this.choice = choice;
        this.cells = new ListCells(table);
        this.currency = currency();
    }

    ReadMaterial material(ListRows.Line line) {
        int row = line.row();
        List<Flag> flags = new ArrayList<>(line.flags());
        flags.addAll(broken(line));
        choice.rowDoubts().forEach(doubt -> flags.add(Flag.doubt(doubt)));
        String lot = table.text(row, Meaning.LOT).replaceAll("^[-–—/]+$|^(?i)n/?a$", "");
        Optional<Price> price = price(row, flags);
        Optional<Grams> stock = stock(row, flags);
        boolean twice = !seen.add(
                Folding.of(line.names().get(0) + "\n" + lot + "\n" + stock + "\n" + table.text(row, Meaning.SUPPLIER)));
        if (twice) {
            flags.add(Flag.doubt("The same material, lot and amount stand in the list twice."));
        }
        if (choice.broken().contains(row)) {
            flags.add(Flag.doubt(
                    "Price, amount and value (or pack) of this row do not fit together; one of them is wrong."));
        }
        return new ReadMaterial(
                row,
                table.grid().address(row, table.names().get(0).place()),
                line.names(),
                table.text(row, Meaning.CAS),
                table.text(row, Meaning.FUNCTION),
                table.text(row, Meaning.SUPPLIER),
                price,
                stock,
                lot,
                day(row, Meaning.RECEIVED, flags),
                day(row, Meaning.EXPIRY, flags),
                table.text(row, Meaning.NOTE),
                flags);
    }

    private static List<Flag> broken(ListRows.Line line) {
        Row row = new Row(line.row(), RowKind.LINE, "", line.names(), "", "", "", List.of(), List.of());
        return NameDoubts.of(row, "", new HashSet<>());
    }

    private Optional<Price> price(int row, List<Flag> flags) {
        ListColumn column = choice.price().orElse(null);
        if (column == null || table.cell(row, column).isBlank()) {
            return Optional.empty();
        }
        MoneyCell money = cells.money(row, column);
        flags.addAll(money.flags());
        if (!money.isFigure()) {
            return Optional.empty();
        }
        choice.priceDoubts().forEach(doubt -> flags.add(Flag.doubt(doubt)));
        if (!money.currency().isEmpty() && !same(money.currency()).equals(currency)) {
            flags.add(Flag.doubt(
                    "\"" + table.cell(row, column).text() + "\" is in another currency than the rest of the list."));
        }
        Optional<BigDecimal> amount = paidFor(row, column, money.basis(), flags);
        return amount.filter(grams -> grams.signum() > 0)
                .map(grams -> new Price(new Money(money.value().orElseThrow()), new Grams(grams)));
    }

    /** For how much the price is [g]; what the cell says goes before what the heading says. */
    private Optional<BigDecimal> paidFor(int row, ListColumn column, Basis inCell, List<Flag> flags) {
        Basis basis = inCell.equals(Basis.UNSAID) ? column.basis() : inCell;
        Optional<BigDecimal> grams = switch (basis.kind()) {
            case MASS -> basis.grams();
            case PACK -> choice.pack().flatMap(pack -> grams(row, pack, new ArrayList<>(), "pack", flags));
            case UNIT -> unitPriced(row);
            case VOLUME -> Optional.empty();
            case UNSAID -> choice.stock().flatMap(stock -> grams(row, stock, new ArrayList<>(), "", new ArrayList<>()));
        };
        boolean differs = inCell.isMass() && column.basis().isMass() && !inCell.equals(column.basis());
        if (differs) {
            flags.add(Flag.doubt(
                    "Heading and cell say different things about what the price is for; the cell is taken."));
        }
        if (grams.filter(value -> value.signum() > 0).isEmpty()) {
            flags.add(Flag.doubt(
                    basis.kind() == Basis.Kind.VOLUME
                            ? "The price is for a volume, which is no mass without a density; it is left out."
                            : "For how much the price is cannot be told; it is left out."));
        }
        return grams;
    }

    /** One of what the column of units says. */
    private Optional<BigDecimal> unitPriced(int row) {
        return table.columns(Meaning.UNIT).stream()
                .findFirst()
                .flatMap(units -> UnitWords.of(table.cell(row, units).text()))
                .flatMap(Unit::grams);
    }

    private Optional<Grams> stock(int row, List<Flag> flags) {
        ListColumn column = choice.stock().orElse(null);
        if (column == null || table.cell(row, column).isBlank()) {
            return Optional.empty();
        }
        List<Flag> doubts = new ArrayList<>();
        choice.stockDoubts().forEach(doubt -> doubts.add(Flag.doubt(doubt)));
        boolean merged = table.cell(row, column).is(Cell.Trait.MERGED)
                || table.grid().cell(row + 1, column.place()).is(Cell.Trait.MERGED);
        if (merged) {
            doubts.add(Flag.doubt(
                    "The amount on the shelf is merged over several rows; what lies there of each lot is not known."));
        }
        Optional<BigDecimal> grams = grams(row, column, doubts, "amount on the shelf", flags);
        return merged ? Optional.empty() : grams.map(Grams::new);
    }

    private Optional<BigDecimal> grams(int row, ListColumn column, List<Flag> doubts, String what, List<Flag> flags) {
        MassCell mass = cells.mass(row, column);
        flags.addAll(mass.flags());
        if (mass.isFigure() || mass.pieces()) {
            flags.addAll(doubts);
        }
        if (!mass.isFigure()) {
            return Optional.empty();
        }
        BigDecimal value = mass.value().orElseThrow();
        if (value.signum() == 0) {
            return Optional.of(BigDecimal.ZERO);
        }
        Optional<BigDecimal> grams = cells.grams(row, column, column.unit());
        if (value.signum() < 0 || grams.isEmpty()) {
            if (!what.isEmpty()) {
                flags.add(Flag.doubt("The " + what + " \""
                        + table.cell(row, column).text() + "\" has no unit of mass or cannot be; it is left out."));
            }
            return Optional.empty();
        }
        boolean apart = mass.unit().isPresent()
                && column.unit().isPresent()
                && !mass.unit().equals(column.unit());
        boolean within = mass.unit().flatMap(Unit::grams).isPresent();
        if (apart && within && column.told() && !choice.proven() && isOneOfFew(column)) {
            flags.add(Flag.note("The unit in the cell is taken, not that of the heading."));
        }
        return grams;
    }

    private boolean isOneOfFew(ListColumn column) {
        return table.part(column, ListColumns::isMass) < 0.5;
    }

    private Optional<LocalDate> day(int row, Meaning meaning, List<Flag> flags) {
        String text = table.text(row, meaning);
        if (text.isEmpty() || text.matches("[-–—/.?]+|(?i)n/?a|none|keine?s?|unlimited|unbegrenzt|illimit\\p{L}+")) {
            return Optional.empty();
        }
        Optional<LocalDate> day = Days.of(column(meaning)).read(text, flags);
        if (day.isEmpty()) {
            flags.add(Flag.doubt("\"" + text + "\" is no day that can be read."));
        }
        return day;
    }

    private List<String> column(Meaning meaning) {
        return table.rows().mapToObj(row -> table.text(row, meaning)).toList();
    }

    /** The currency of most prices. */
    private String currency() {
        List<String> all = choice.price().stream()
                .flatMap(column -> table.rows().mapToObj(row -> cells.money(row, column)))
                .filter(money -> !money.currency().isEmpty())
                .map(money -> same(money.currency()))
                .toList();
        return all.stream()
                .max(java.util.Comparator.comparingLong(
                        one -> all.stream().filter(one::equals).count()))
                .orElse("");
    }

    private static String same(String currency) {
        return switch (currency) {
            case "euro", "euros", "eur" -> "€";
            case "gbp", "pound sterling", "pounds sterling", "sterling" -> "£";
            case "usd", "dollar", "dollars" -> "$";
            case "sfr", "fr." -> "chf";
            default -> currency;
        };
    }
}
