package stillroom.formulary.imports;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Says of each row of a list what it is: a material, the heading of a kind, a total, a note. */
final class ListRows {
    /** @param above row in which the name stands, where this row has none of its own */
    record Line(int row, List<String> names, int above, List<Flag> flags) {}

    private static final Pattern TOTAL = Pattern.compile(
            ".*(?<!\\p{L})(grand total|sub-?total|totals?|gesamt\\w*|gesamtwert|\\w*summe|sous-?total|total general|totale|totaal|totaux|suma|somma|total value|value of (the )?stock|lagerwert|warenwert|bestandswert|valeur totale|valeur du stock|inventurwert|valor total|valore totale|insgesamt|zusammen)(?!\\p{L}).*");
    private static final Pattern CHARGE = Pattern.compile(
            "(\\+ ?)?(vat|mwst|ust|tva|iva|btw|delivery|shipping|postage|p&p|versand\\w*|porto|frais|livraison|transport|spedizion\\w*|spese|envio|gastos|verzend\\w*|discount|rabatt|remise|carriage|freight|fracht|skonto)(?!\\p{L}).*");

    private final ListTable table;
    private final ListCells cells;
    private final Map<Integer, RowKind> kinds = new LinkedHashMap<>();
    private final List<Line> lines = new ArrayList<>();
    private final List<Flag> flags = new ArrayList<>();
    private int named = -1;

    ListRows(ListTable table) {
        this.table = table;
        this.cells = new ListCells(table);
        table.titles().forEach(row -> kinds.put(row, RowKind.TITLE));
        table.heads().forEach(row -> kinds.put(row, RowKind.HEADING));
        table.rows().forEach(this::judge);
    }

    Map<Integer, RowKind> kinds() {
        return Map.copyOf(kinds);
    }

    List<Line> lines() {
        return List.copyOf(lines);
    }

    /** What was left out and may have been meant. */
    List<Flag> flags() {
        return List.copyOf(flags);
    }

    List<Integer> totals() {
        return kinds.entrySet().stream()
                .filter(entry -> entry.getValue() == RowKind.TOTAL)
                .map(Map.Entry::getKey)
                .toList();
    }

    private void judge(int row) {
        RowKind told = table.terms().guidance().rows().get(row);
        RowKind kind = told != null ? told : kind(row);
        kinds.put(row, kind);
        if (kind == RowKind.LINE) {
            line(row);
        } else if (kind != RowKind.NOTE) {
            named = kind == RowKind.TITLE && !table.firstName(row).isEmpty() ? row : -1;
        }
    }

    private RowKind kind(int row) {
        if (table.filled(row).findAny().isEmpty()) {
            return RowKind.BLANK;
        }
        if (isTotal(row)) {
            return RowKind.TOTAL;
        }
        String name = table.firstName(row);
        boolean figures = List.of(Meaning.PRICE, Meaning.PACK, Meaning.STOCK, Meaning.AMOUNT, Meaning.VALUE).stream()
                .flatMap(meaning -> table.columns(meaning).stream())
                .anyMatch(column -> table.cell(row, column).text().matches(".*\\d.*"));
        boolean facts = holds(row, Meaning.LOT, Meaning.RECEIVED, Meaning.EXPIRY, Meaning.SUPPLIER, Meaning.CAS);
        if (figures && name.isEmpty() && table.filled(row).count() == 1) {
            return unnamed(row, true, facts);
        }
        if (table.filled(row).count() == 1 || !figures && !facts && !hasMore(row, name)) {
            return alone(row, name);
        }
        if (name.isEmpty()) {
            return unnamed(row, figures, facts);
        }
        if (isPieces(row)) {
            flags.add(Flag.doubt(
                    "Row " + (row + 1) + " (\"" + name + "\") counts pieces and was left out as no material."));
            return RowKind.LEFT_OUT;
        }
        return RowKind.LINE;
    }

    private boolean hasMore(int row, String name) {
        long names = table.names().stream()
                .map(column -> table.cell(row, column).text())
                .filter(text -> !text.isEmpty())
                .distinct()
                .count();
        return names > 1 || !name.isEmpty() && table.filled(row).count() > 2;
    }

    /** A text alone: the heading of a kind, a remark, or a material of which nothing else is known. */
    private RowKind alone(int row, String name) {
        if (!name.isEmpty() && table.terms().knownName().test(name) && !isUnnamedBelow(row)) {
            flags.add(Flag.doubt("Row " + (row + 1) + ": nothing stands beside \"" + name + "\"; it was left out."));
        }
        return moreBelow(row) ? RowKind.TITLE : RowKind.NOTE;
    }

    private boolean isUnnamedBelow(int row) {
        return row < table.last()
                && table.firstName(row + 1).isEmpty()
                && table.filled(row + 1).count() > 1;
    }

    private boolean moreBelow(int row) {
        return table.rows().anyMatch(below -> below > row && table.filled(below).count() > 1);
    }

    /** Figures without a name: a further lot of the material above, or a sum. */
    private RowKind unnamed(int row, boolean figures, boolean facts) {
        boolean lot = holds(row, Meaning.LOT) || holds(row, Meaning.EXPIRY) || holds(row, Meaning.RECEIVED);
        if (named >= 0 && figures && (lot || holds(row, Meaning.STOCK))) {
            return RowKind.LINE;
        }
        boolean sum = table.columns().stream()
                .filter(column -> !table.cell(row, column).isBlank())
                .allMatch(column -> column.meaning() == Meaning.VALUE
                        || column.meaning() == Meaning.PRICE
                        || column.meaning() == Meaning.STOCK
                        || column.meaning() == Meaning.AMOUNT
                        || column.meaning() == Meaning.LEFT_OUT);
        if (figures && sum && !moreBelow(row)) {
            return RowKind.TOTAL;
        }
        if (figures || facts) {
            flags.add(Flag.doubt("Row " + (row + 1) + " has figures and no name; it was left out."));
        }
        return RowKind.NOTE;
    }

    private boolean isTotal(int row) {
        boolean lot = List.of(Meaning.LOT, Meaning.EXPIRY, Meaning.SUPPLIER).stream()
                .flatMap(meaning -> table.columns(meaning).stream())
                .map(column -> table.cell(row, column))
                .anyMatch(cell -> !cell.isBlank() && !saysTotal(row, cell));
        return !lot && table.filled(row).anyMatch(cell -> saysTotal(row, cell));
    }

    private boolean saysTotal(int row, Cell cell) {
        String text = Folding.of(cell.text());
        return cell.number().isEmpty()
                && text.length() <= 60
                && (RowWords.isTotal(text)
                        || TOTAL.matcher(text).matches() && !holds(row, Meaning.STOCK)
                        || CHARGE.matcher(text).matches());
    }

    private boolean holds(int row, Meaning... meanings) {
        for (Meaning meaning : meanings) {
            if (table.columns(meaning).stream()
                    .anyMatch(column -> !table.cell(row, column).isBlank())) {
                return true;
            }
        }
        return false;
    }

    private boolean isPieces(int row) {
        boolean pieces = false;
        boolean masses = false;
        for (Meaning meaning : List.of(Meaning.STOCK, Meaning.PACK, Meaning.AMOUNT, Meaning.UNIT)) {
            for (ListColumn column : table.columns(meaning)) {
                MassCell cell = cells.mass(row, column);
                boolean piece = cell.pieces() && !table.cell(row, column).text().matches("(?i)units?|op|st");
                pieces |= piece;
                masses |= cell.unit().flatMap(Unit::grams).isPresent();
            }
        }
        return pieces && !masses;
    }

    private void line(int row) {
        List<String> names = names(row);
        List<Flag> doubts = new ArrayList<>();
        int above = row;
        boolean hidden = table.filled(row).allMatch(cell -> cell.is(Cell.Trait.HIDDEN));
        if (hidden) {
            doubts.add(Flag.doubt("This row is hidden in the sheet."));
        }
        if (names.isEmpty() && named >= 0) {
            names = names(named);
            above = named;
            doubts.add(Flag.doubt("No name stands in this row; it is taken for a further lot of what stands above."));
        } else {
            named = row;
        }
        lines.add(new Line(row, names, above, doubts));
    }

    private List<String> names(int row) {
        return table.names().stream()
                .map(column -> NameText.of(table.cell(row, column).text()))
                .filter(text -> !text.isEmpty())
                .distinct()
                .toList();
    }
}
