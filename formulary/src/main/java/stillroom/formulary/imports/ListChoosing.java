package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Decides which columns of a list give price, pack and stock: by arithmetic first, then by their headings. */
final class ListChoosing {
    private static final Pattern UNIT_FOR_ALL = Pattern.compile(
            ".*(stock|weights?|quantit|amounts?|" + ListWords.GERMAN_STOCK
                    + "|bestande|mengen?|gewicht|poids|pesos?|pesi|voorraad|gewichten|giacenze|existencias|everything|all|alles|alle angaben|tout).{0,30}\\b(?:in|en) (kg|kilos?|g|grams?|gramm|grammes|gramos|grammi|gram)\\b.*");

    private static final String CODED = "(?=.*\\p{L})(?=.*\\d)[\\p{L}\\d./_-]{3,}";

    private final ListTable table;
    private final ListCells cells;
    private final List<String> priceDoubts = new ArrayList<>();
    private final List<String> stockDoubts = new ArrayList<>();
    private final Set<Integer> broken = new HashSet<>();

    private ListChoosing(ListTable table) {
        this.table = table;
        this.cells = new ListCells(table);
    }

    static ListChoice of(ListTable table) {
        return new ListChoosing(table).choose();
    }

    private ListChoice choose() {
        ListProof proof = new ListProof(table, cells);
        List<ListColumn> stocks = stocks();
        Optional<ListProof.Found> byValue = proof.value(stocks);
        Optional<ListProof.Found> byPack = proof.pack();
        byValue.ifPresent(found -> broken.addAll(found.broken()));
        byPack.ifPresent(found -> broken.addAll(found.broken()));
        Optional<ListColumn> pack = byPack.map(ListProof.Found::mass).or(this::pack);
        Optional<ListColumn> stock = byValue.map(ListProof.Found::mass).or(() -> stock(stocks, pack.isPresent()));
        Optional<ListColumn> price = byPack.map(ListProof.Found::price)
                .or(() -> byValue.map(ListProof.Found::price))
                .or(() -> price(pack, stock));
        if (byValue.isEmpty()) {
            contradiction(price, stock);
        }
        List<String> doubts = new ArrayList<>(price.isEmpty() || stock.isEmpty() ? unexplained() : List.of());
        doubts.addAll(perhapsLots());
        return new ListChoice(
                price,
                pack,
                stock,
                priceDoubts,
                stockDoubts,
                doubts,
                byValue.isPresent() || byPack.isPresent(),
                broken);
    }

    /** Letters with digits under a heading that says nothing known, where no column of lots is. */
    private List<String> perhapsLots() {
        return !table.columns(Meaning.LOT).isEmpty()
                ? List.of()
                : table.columns().stream()
                        .filter(column -> column.meaning() == Meaning.LEFT_OUT
                                && !column.told()
                                && !column.heading().isEmpty())
                        .filter(column -> table.cells(column).size() > 1
                                && table.part(column, cell -> cell.text().matches(CODED)) > 0.6)
                        .map(column -> "Column " + Grid.letters(column.place()) + " (\"" + column.heading()
                                + "\") may hold the lots; it was left out.")
                        .toList();
    }

    /** Columns of masses, or of figures whose heading says nothing known: where price or stock is missing, it may be one of them. */
    private List<String> unexplained() {
        return table.columns().stream()
                .filter(column -> column.meaning() == Meaning.LEFT_OUT
                        && table.cells(column).size() > 1)
                .filter(column -> !column.told() && table.part(column, ListColumns::isFigure) > 0.5
                        || table.part(column, ListColumns::isMass) > 0.5)
                .map(column -> "Column " + Grid.letters(column.place()) + " (\"" + column.heading()
                        + "\") holds figures of which nothing was made.")
                .toList();
    }

    private List<ListColumn> stocks() {
        List<ListColumn> stocks =
                table.columns(Meaning.STOCK).stream().filter(cells::hasFigures).toList();
        return stocks.isEmpty()
                ? table.columns(Meaning.AMOUNT).stream()
                        .filter(column -> !column.unit().map(Unit::isShare).orElse(false))
                        .filter(cells::hasFigures)
                        .toList()
                : stocks;
    }

    private Optional<ListColumn> pack() {
        List<ListColumn> packs =
                table.columns(Meaning.PACK).stream().filter(cells::hasFigures).toList();
        if (packs.size() > 1) {
            priceDoubts.add("Several columns may be sizes of the pack; \""
                    + packs.get(0).heading() + "\" is taken.");
        }
        return packs.stream().findFirst().map(pack -> {
            Optional<Unit> said = unitForAll();
            return cells.isWithUnits(pack) || said.isEmpty() ? pack : pack.in(said);
        });
    }

    private Optional<ListColumn> stock(List<ListColumn> stocks, boolean packed) {
        if (stocks.isEmpty()) {
            return Optional.empty();
        }
        ListColumn chosen = stocks.stream()
                .filter(column -> Folding.of(column.heading())
                        .matches(".*(on hand|actual|physical|\\bist|current|aktuell|closing|now|today|total).*"))
                .findFirst()
                .orElse(stocks.get(stocks.size() - 1));
        if (stocks.size() > 1) {
            stockDoubts.add("Several columns may be amounts on the shelf; \"" + chosen.heading() + "\" is taken.");
        } else if (chosen.meaning() == Meaning.AMOUNT && !ListEvidence.isCalledStock(table)) {
            stockDoubts.add(
                    "\"" + chosen.heading() + "\" is taken for the amount on the shelf, though it does not say so.");
        }
        Optional<Unit> said = unitForAll();
        return Optional.of(cells.isWithUnits(chosen) || said.isEmpty() ? chosen : chosen.in(said));
    }

    /** "Stock in g", said above or below the list. */
    private Optional<Unit> unitForAll() {
        return table.said().stream()
                .map(text -> UNIT_FOR_ALL.matcher(Folding.of(text)))
                .filter(Matcher::matches)
                .map(said -> said.group(2))
                .findFirst()
                .flatMap(word -> UnitWords.of(word.startsWith("kilo") ? "kg" : word));
    }

    private Optional<ListColumn> price(Optional<ListColumn> pack, Optional<ListColumn> stock) {
        List<ListColumn> prices =
                table.columns(Meaning.PRICE).stream().filter(cells::hasFigures).toList();
        if (prices.isEmpty()) {
            return Optional.empty();
        }
        ListColumn chosen = preferred(prices, pack.isPresent());
        long same = prices.stream()
                .filter(one -> one.basis().kind() == chosen.basis().kind())
                .count();
        if (same > 1 && !isNet(chosen)) {
            priceDoubts.add("Several columns may be prices; \"" + chosen.heading() + "\" is taken.");
        }
        return Optional.of(settled(chosen, pack, stock));
    }

    private static ListColumn preferred(List<ListColumn> prices, boolean packed) {
        List<ListColumn> told = prices.stream().filter(ListColumn::told).toList();
        List<ListColumn> from = told.isEmpty() ? prices : told;
        return from.stream()
                .filter(column -> packed && column.basis().kind() == Basis.Kind.PACK)
                .findFirst()
                .or(() -> from.stream()
                        .filter(column -> packed && column.basis().equals(Basis.UNSAID) && isPaid(column))
                        .findFirst())
                .or(() -> from.stream()
                        .filter(column -> column.basis().isMass() && isNet(column))
                        .findFirst())
                .or(() -> from.stream()
                        .filter(column -> column.basis().isMass())
                        .min(Comparator.comparing(column -> column.basis()
                                .grams()
                                .orElseThrow()
                                .subtract(BigDecimal.valueOf(1000))
                                .abs())))
                .or(() -> from.stream().filter(ListChoosing::isNet).findFirst())
                .orElse(from.get(0));
    }

    private static boolean isPaid(ListColumn column) {
        return Folding.of(column.heading()).matches(".*(paid|bezahlt|paye|pagado|pagato|betaald|\\bek\\b).*");
    }

    private static boolean isNet(ListColumn column) {
        return Folding.of(column.heading())
                .matches(
                        ".*(\\bnet\\b|netto|\\bht\\b|hors taxe|\\bneto\\b|sin iva|excl|new|neu|current|aktuell|nouveau|nuevo|nuovo|nieuw).*");
    }

    /** What the price is for, where its heading leaves that open. */
    private ListColumn settled(ListColumn price, Optional<ListColumn> pack, Optional<ListColumn> stock) {
        Basis.Kind kind = price.basis().kind();
        if (kind == Basis.Kind.MASS || kind == Basis.Kind.VOLUME || cellsSay(price)) {
            return price;
        }
        Optional<Basis> said = saidElsewhere();
        if (pack.isPresent() && said.isEmpty()) {
            if (!price.told() || kind == Basis.Kind.UNIT) {
                priceDoubts.add("The price is taken to be for the pack, though its heading does not say so.");
            }
            return price.per(Basis.of(Basis.Kind.PACK));
        }
        if (said.isPresent()) {
            if (pack.isPresent()) {
                priceDoubts.add(
                        "The sheet says elsewhere what prices are for, and has sizes of packs; the price is taken for "
                                + said.get()
                                        .grams()
                                        .map(BigDecimal::toPlainString)
                                        .orElse("?") + " g.");
            }
            return price.per(said.get());
        }
        if (kind == Basis.Kind.UNIT && !table.columns(Meaning.UNIT).isEmpty()) {
            return price;
        }
        if (isPaid(price) && stock.isPresent()) {
            priceDoubts.add("The sheet does not say for how much the price is; it is taken for the whole amount.");
            return price.per(Basis.of(Basis.Kind.UNSAID));
        }
        priceDoubts.add("The sheet does not say for how much the price is; it is taken per kg.");
        return price.per(Basis.of(BigDecimal.valueOf(1000)));
    }

    private boolean cellsSay(ListColumn price) {
        return table.rows()
                .mapToObj(row -> cells.money(row, price))
                .filter(MoneyCell::isFigure)
                .allMatch(money -> !money.basis().equals(Basis.UNSAID));
    }

    /** "All prices per kg", said above or below the list. */
    private Optional<Basis> saidElsewhere() {
        return table.said().stream()
                .map(Folding::of)
                .filter(
                        text -> text.length() <= 120
                                && text.matches(
                                        ".*(prices?|preise?|\\bprix\\b|precios?|prezzi|prijzen|cost|kosten|tarif|€|£|\\$|eur).*"))
                .map(text -> text.replaceAll(
                        ".*?((?:/|\\b(?:per|pro|je|por|par|al|au|the)\\b) ?\\d* ?(?:kg|kilo|g|lb|oz)\\b).*", "$1"))
                .filter(text -> text.matches("(/|per|pro|je|por|par|al|au|the).*"))
                .map(ListWords::basis)
                .filter(Basis::isMass)
                .findFirst();
    }

    /** A value is stated, and price times stock as the headings have them never makes it. */
    private void contradiction(Optional<ListColumn> price, Optional<ListColumn> stock) {
        Optional<ListColumn> value = table.column(Meaning.VALUE).filter(cells::hasFigures);
        boolean stated = price.map(column -> column.basis().isMass()).orElse(false);
        if (value.isPresent() && stated && stock.isPresent()) {
            ListProduct product = ListProduct.of(
                    table,
                    row -> cells.money(row, price.get()).value(),
                    row -> cells.grams(row, stock.get(), stock.get().unit()),
                    row -> price.get().basis().grams(),
                    row -> cells.money(row, value.get()).value());
            if (!product.held().isEmpty()
                    && product.broken().size() < product.held().size()) {
                broken.addAll(product.broken());
            } else if (!product.broken().isEmpty()) {
                stockDoubts.add("Price times stock does not make the value that the sheet states.");
            }
        }
    }
}
