package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What speaks for a list of materials and what for a formula, in points that were set by hand (common practice, no source).
 *
 * @param list points for a list
 * @param formula points for a formula
 * @param shares whether a column holds shares of a whole
 * @param whole whether a column makes 100 or 1
 * @param bare whether no headings stand above
 */
record ListEvidence(int list, int formula, boolean shares, boolean whole, boolean bare) {
    private static final Pattern SHELF_TITLE = Pattern.compile(
            ".*(\\bstock|inventory|inventur|lager|" + ListWords.GERMAN_STOCK
                    + "|inventaire|inventario|voorraad|giacenz|magazzino|almacen|existencias|cupboard|shelf|larder|vorrat|valuation).*");
    private static final Pattern LIST_TITLE = Pattern.compile(
            ".*(price|preis|tarif|listino|prijs|precios|prezzi|prix|shopping|einkauf|raw material|rohstoffliste|rohstoffe\\b|matieres premieres|materias primas|materie prime|grondstoffen|order list|bestell|\\brm list|material list|materials list|supplier|lieferant|fournisseur).*");
    private static final Pattern BATCH_TITLE = Pattern.compile(
            ".*(batch (record|size|sheet|weight|kg|g)|weighing|formula|recipe|rezept|recette|receta|ricetta|recept|herstell|ansatz|wiegeliste|einwaage|pesee|manufactur|costing|kalkulation|\\bmakes\\b).*");
    private static final Pattern WEIGHED = Pattern.compile(
            ".*(required|weighed|weigh out|target|\\bsoll|\\bist\\b|einwaage|a peser|pese\\b|da pesare|pesado|afgewogen|per batch|batch|charge|ansatz|for \\d|fur \\d|pour \\d|per \\d+ ?(jars?|pieces|kg)).*");
    private static final int CLEAR = 2;
    private static final int MUCH = 5;

    static ListEvidence of(ListTable table, ListChoice choice, List<Integer> totals) {
        return new ListEvidence(
                list(table, choice),
                formula(table, totals),
                hasShares(table),
                isWhole(table, totals),
                table.heads().isEmpty());
    }

    /** Whether it is taken for a list. */
    boolean isList() {
        return list >= formula;
    }

    /** Whether it may as well be the other. */
    boolean isThin() {
        return isList()
                ? shares || bare || list - formula < CLEAR
                : list >= CLEAR && formula - list <= CLEAR || list >= MUCH && !whole;
    }

    /** Whether the sheet calls itself a list of stock. */
    static boolean isCalledStock(ListTable table) {
        return titles(table, SHELF_TITLE);
    }

    private static boolean titles(ListTable table, Pattern form) {
        return form.matcher(Folding.of(table.grid().name())).matches()
                || table.titles().stream()
                        .flatMap(table::filled)
                        .filter(cell -> cell.text().length() <= 80)
                        .anyMatch(cell -> form.matcher(Folding.of(cell.text())).matches());
    }

    private static int list(ListTable table, ListChoice choice) {
        int points = 0;
        points += has(table, Meaning.STOCK) ? 3 : 0;
        points += has(table, Meaning.PRICE) ? 1 : 0;
        points += has(table, Meaning.PACK) ? 2 : 0;
        points += has(table, Meaning.VALUE) && isSaidOfValue(table) ? 1 : 0;
        points += has(table, Meaning.LOT) ? 2 : 0;
        points += has(table, Meaning.EXPIRY) ? 2 : 0;
        points += has(table, Meaning.RECEIVED) ? 2 : 0;
        points += has(table, Meaning.SUPPLIER) ? 1 : 0;
        points += table.columns().stream().anyMatch(column -> ListWords.isLevel(Folding.of(column.heading()))) ? 1 : 0;
        points += isCalledStock(table) ? 2 : titles(table, LIST_TITLE) ? 1 : 0;
        points += table.columns(Meaning.AMOUNT).isEmpty() && isNowhereAsNeeded(table) ? 2 : 0;
        points += choice.proven() && (has(table, Meaning.VALUE) || has(table, Meaning.PACK)) ? 1 : 0;
        return points + told(table, 5, Meaning::isOfTheShelf);
    }

    private static int formula(ListTable table, List<Integer> totals) {
        List<ListColumn> amounts = table.columns(Meaning.AMOUNT);
        boolean summed = amounts.stream()
                .anyMatch(column -> totals.stream().anyMatch(row -> ListColumns.isFigure(table.cell(row, column))));
        int points = 0;
        points += hasShares(table) ? 3 : amounts.isEmpty() ? 0 : 1;
        points += isWhole(table, totals) ? 6 : 0;
        points += summed || isSummedElsewhere(table, totals) ? 3 : 0;
        points += summed && has(table, Meaning.STOCK) ? 2 : 0;
        points += isNowhereAsNeeded(table) ? 0 : 4;
        points += hasPhases(table) ? 3 : 0;
        points += titles(table, BATCH_TITLE) ? 2 : 0;
        points += amounts.stream()
                        .anyMatch(column ->
                                WEIGHED.matcher(Folding.of(column.heading())).matches())
                ? 3
                : 0;
        return points + told(table, 10, meaning -> meaning == Meaning.AMOUNT);
    }

    /** Totals under a column of which nothing is known, and under none of the shelf. */
    private static boolean isSummedElsewhere(ListTable table, List<Integer> totals) {
        return totals.stream()
                        .anyMatch(row -> table.columns().stream()
                                .anyMatch(column -> column.meaning() == Meaning.LEFT_OUT
                                        && !column.told()
                                        && ListColumns.isFigure(table.cell(row, column))))
                && totals.stream()
                        .noneMatch(row -> table.columns().stream()
                                .anyMatch(column -> column.meaning().isOfTheShelf()
                                        && ListColumns.isFigure(table.cell(row, column))));
    }

    /** What the maker said that columns are. */
    private static int told(ListTable table, int points, java.util.function.Predicate<Meaning> speaks) {
        return table.terms().guidance().columns().values().stream().anyMatch(speaks) ? points : 0;
    }

    private static boolean has(ListTable table, Meaning meaning) {
        return table.columns(meaning).stream()
                .anyMatch(column -> !table.cells(column).isEmpty());
    }

    private static boolean isSaidOfValue(ListTable table) {
        return table.columns(Meaning.VALUE).stream()
                .anyMatch(column -> Folding.of(column.heading())
                        .matches(".*(val|wert|waarde|worth|stock|" + ListWords.GERMAN_STOCK + ").*"));
    }

    private static boolean isShare(Cell cell) {
        return FigureReading.read(cell, Optional.empty())
                .unit()
                .map(Unit::isShare)
                .orElse(false);
    }

    private static boolean isNowhereAsNeeded(ListTable table) {
        return table.rows()
                .mapToObj(row -> table.columns().stream()
                        .filter(column -> !column.meaning().names() && column.meaning() != Meaning.NOTE)
                        .map(column -> table.cell(row, column))
                        .filter(cell -> cell.number().isEmpty() && cell.text().length() <= 24))
                .flatMap(cells -> cells)
                .map(cell -> FigureReading.read(cell, Optional.empty()).kind())
                .noneMatch(kind -> kind == Figure.Kind.TO_WHOLE
                        || kind == Figure.Kind.AS_NEEDED
                        || kind == Figure.Kind.TO_READING);
    }

    private static boolean hasPhases(ListTable table) {
        boolean column = table.columns(Meaning.PHASE).stream()
                .anyMatch(one ->
                        Folding.of(one.heading()).matches("(ph|fas|stage|step|etape|schritt|stufe|part\\b|teil).*"));
        return column
                || table.rows()
                        .anyMatch(row -> table.filled(row).count() == 1
                                && table.filled(row).allMatch(cell -> RowWords.isPhase(cell.text())));
    }

    private static boolean hasShares(ListTable table) {
        return table.columns(Meaning.AMOUNT).stream()
                .anyMatch(column -> column.unit().map(Unit::isShare).orElse(false)
                        || table.part(column, ListEvidence::isShare) > 0.5);
    }

    /** Whether a column that is none of the shelf has figures that make 100 or 1. */
    private static boolean isWhole(ListTable table, List<Integer> totals) {
        return table.columns().stream()
                .filter(column -> column.meaning() == Meaning.AMOUNT
                        || column.meaning() == Meaning.LEFT_OUT && !ListWords.isLevel(Folding.of(column.heading())))
                .anyMatch(column -> isWhole(table, column, totals));
    }

    private static boolean isWhole(ListTable table, ListColumn column, List<Integer> totals) {
        List<BigDecimal> figures = table.rows()
                .filter(row -> !totals.contains(row) && !table.firstName(row).isEmpty())
                .mapToObj(row -> FigureReading.read(
                        table.cell(row, column), table.terms().mark()))
                .filter(Figure::isNumber)
                .map(Figure::middle)
                .toList();
        double sum = figures.stream().mapToDouble(BigDecimal::doubleValue).sum();
        return figures.size() > 2 && (Math.abs(sum - 100) < 0.05 || Math.abs(sum - 1) < 0.0005);
    }
}
