package stillroom.formulary.imports;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Finds the parts of a sheet whose headings are those of a list of materials. */
final class ListHeads {
    private static final int LOOK = 5;
    private static final Pattern FIGURE = Pattern.compile("[-+]?\\s?(" + ListWords.CURRENCY + ")?\\s?" + Numeral.FORM
            + "\\s?(%|kg|g|mg|ml|l|" + ListWords.CURRENCY + ")?");
    private static final Pattern CODE = Pattern.compile("\\p{Lu}{0,4}[-_./ ]?\\d{2,}[-_./\\d]*");
    private static final Pattern UNIT_ALONE = Pattern.compile(
            "[\\[(]?\\s*(" + ListWords.CURRENCY + "|per|pro|je|in|par|/|kg|kgs|g|gr|mg|oz|lb|100|\\s)+[\\])]?");

    private final Grid grid;
    private final Terms terms;
    private final boolean[] isHead;

    ListHeads(Grid grid, Terms terms) {
        this.grid = grid;
        this.terms = terms;
        this.isHead = new boolean[grid.height()];
        for (int row = 0; row < grid.height(); row++) {
            isHead[row] = judged(row);
        }
    }

    List<ListTable> find() {
        List<ListTable> tables = new ArrayList<>();
        for (int row = 0; row < grid.height(); row++) {
            if (!isHead(row)) {
                continue;
            }
            List<Integer> heads = new ArrayList<>(List.of(row));
            if (goesOn(row)) {
                heads.add(row + 1);
            }
            List<ListColumn> columns = read(row, heads.size() > 1);
            int first = row + heads.size();
            ListTable table = new ListTable(grid, terms, columns, heads, titles(row), first, last(first));
            add(tables, table);
            row += heads.size() - 1;
        }
        if (tables.isEmpty() && new Heads(grid, terms).find().isEmpty()) {
            return bare();
        }
        return tables.stream()
                .filter(table -> columnsOfTheShelf(table.columns()) > 0)
                .map(table -> new ListColumns(table).told())
                .filter(table -> !table.names().isEmpty() && hasBody(table))
                .toList();
    }

    /** A sheet without headings that has money in it. */
    private List<ListTable> bare() {
        ListTable table = new ListColumns(
                        new ListTable(grid, terms, List.of(), List.of(), List.of(), 0, grid.height() - 1))
                .told();
        boolean money = !table.columns(Meaning.PRICE).isEmpty();
        return money && !table.names().isEmpty() && hasBody(table) ? List.of(table) : List.of();
    }

    /** Headings that come once more below begin no list of their own. */
    private static void add(List<ListTable> tables, ListTable table) {
        ListTable before = tables.isEmpty() ? null : tables.get(tables.size() - 1);
        if (before == null || !headings(before).equals(headings(table))) {
            tables.add(table);
            return;
        }
        List<Integer> heads = new ArrayList<>(before.heads());
        heads.addAll(table.heads());
        tables.set(
                tables.size() - 1,
                new ListTable(
                        table.grid(),
                        table.terms(),
                        before.columns(),
                        heads,
                        before.titles(),
                        before.first(),
                        table.last()));
    }

    private static List<String> headings(ListTable table) {
        return table.columns().stream()
                .map(column -> column.place() + Folding.of(column.heading()))
                .toList();
    }

    private boolean isHead(int row) {
        return isHead[row];
    }

    private boolean judged(int row) {
        RowKind told = terms.guidance().rows().get(row);
        if (told != null) {
            return told == RowKind.HEADING;
        }
        List<Cell> cells = grid.rows().get(row);
        if (cells.stream().filter(cell -> !cell.isBlank()).count() < 2
                || cells.stream().anyMatch(ListHeads::isFigure)) {
            return false;
        }
        List<ListColumn> columns = read(row, false);
        if (isFacts(columns)) {
            return false;
        }
        long known = columns.stream().filter(ListColumn::told).count();
        long shelf = columnsOfTheShelf(columns);
        boolean names = columns.stream().anyMatch(column -> column.meaning().names());
        boolean amounts = columns.stream().anyMatch(column -> column.meaning() == Meaning.AMOUNT);
        boolean few = known < 2 || known * 2 < columns.size();
        boolean more = names ? shelf > 0 || amounts : shelf > 1;
        return !few && more && figuresBelow(row);
    }

    private static long columnsOfTheShelf(List<ListColumn> columns) {
        return columns.stream()
                .filter(column -> column.meaning().isOfTheShelf())
                .count();
    }

    /** "Product: | Lotion | Lot: | L1" tells facts and heads nothing. */
    private static boolean isFacts(List<ListColumn> columns) {
        return IntStream.range(0, columns.size() - 1)
                .anyMatch(i -> columns.get(i).heading().endsWith(":")
                        && !columns.get(i + 1).told());
    }

    private static boolean isFigure(Cell cell) {
        return cell.number().isPresent()
                || FIGURE.matcher(cell.text().toLowerCase(Locale.ROOT)).matches()
                || CODE.matcher(cell.text()).matches();
    }

    private boolean figuresBelow(int row) {
        return IntStream.rangeClosed(row + 1, Math.min(row + LOOK, grid.height() - 1))
                .anyMatch(below -> grid.rows().get(below).stream()
                                        .filter(cell -> !cell.isBlank())
                                        .count()
                                > 1
                        && grid.rows().get(below).stream()
                                .anyMatch(cell -> cell.text().matches(".*\\d.*")));
    }

    private List<ListColumn> read(int row, boolean withNext) {
        List<ListColumn> columns = new ArrayList<>();
        for (int place = 0; place < grid.width(row); place++) {
            String upper = grid.cell(row, place).text();
            String text = withNext ? (upper + " " + grid.cell(row + 1, place).text()).strip() : upper;
            if (!text.isEmpty()) {
                columns.add(ListWords.read(place, text));
            }
        }
        return columns;
    }

    /** Whether the headings go on in the row below, with units or the rest of their words. */
    private boolean goesOn(int row) {
        int next = row + 1;
        if (next >= grid.height() || terms.guidance().rows().containsKey(next)) {
            return false;
        }
        List<Cell> cells =
                grid.rows().get(next).stream().filter(cell -> !cell.isBlank()).toList();
        boolean words = !cells.isEmpty()
                && cells.stream()
                        .allMatch(cell -> cell.number().isEmpty() && cell.text().length() <= 16);
        long units = cells.stream()
                .filter(cell -> UNIT_ALONE.matcher(Folding.of(cell.text())).matches())
                .count();
        boolean named = read(row, false).stream()
                .filter(column -> column.meaning().names())
                .anyMatch(column -> !grid.cell(next, column.place()).isBlank());
        boolean figures = cells.stream()
                .anyMatch(cell ->
                        FIGURE.matcher(cell.text().toLowerCase(Locale.ROOT)).matches()
                                && !UNIT_ALONE.matcher(Folding.of(cell.text())).matches());
        return words && !figures && units * 2 >= cells.size() && (!named || units == cells.size());
    }

    private List<Integer> titles(int head) {
        List<Integer> titles = new ArrayList<>();
        int row = head - 1;
        while (row >= 0 && !isHead(row) && (isBlank(row) || !isLine(row))) {
            if (!isBlank(row)) {
                titles.add(0, row);
            }
            row--;
        }
        return titles;
    }

    /** A row with a name and a figure, as in a table above. */
    private boolean isLine(int row) {
        List<Cell> cells =
                grid.rows().get(row).stream().filter(cell -> !cell.isBlank()).toList();
        boolean figure = cells.stream()
                .anyMatch(cell -> !cell.is(Cell.Trait.DAY)
                        && FigureReading.read(cell, terms.mark()).isAmount());
        return cells.size() > 1 && figure && !RowWords.isFact(cells.get(0).text());
    }

    private boolean isBlank(int row) {
        return grid.rows().get(row).stream().allMatch(Cell::isBlank);
    }

    /** Down to the next headings, without the titles above them. */
    private int last(int first) {
        int next = IntStream.range(first, grid.height())
                .filter(this::isHead)
                .findFirst()
                .orElse(grid.height());
        if (next == grid.height()) {
            return next - 1;
        }
        int last = next - 1;
        while (last >= first && !isBlank(last) && !isLine(last)) {
            last--;
        }
        return last >= first && isBlank(last) ? last : next - 1;
    }

    /** Whether most named rows below hold something of the shelf. */
    private static boolean hasBody(ListTable table) {
        long filled = table.rows()
                .filter(row -> table.filled(row).findAny().isPresent())
                .count();
        long shelf = table.rows()
                .filter(row -> table.columns().stream()
                        .anyMatch(column -> column.meaning().isOfTheShelf()
                                && !table.cell(row, column).isBlank()))
                .count();
        return shelf > 0 && shelf * 5 >= filled * 2;
    }
}
