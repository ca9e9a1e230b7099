package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Looks for arithmetic in a list that proves how its columns are meant: pack price over pack size makes the price per kg; price
 * times stock makes the value. Only what one reading alone explains counts.
 */
record ListProof(ListTable table, ListCells cells) {
    /** One way to read three columns that the figures bear out. */
    record Found(ListColumn price, ListColumn mass, ListColumn made, Set<Integer> broken) {}

    /** @return the columns of the pack price (with its basis), the pack (with its unit), and the price per mass */
    Optional<Found> pack() {
        List<Found> found = new ArrayList<>();
        List<ListColumn> prices = table.columns(Meaning.PRICE);
        for (ListColumn paid : prices) {
            for (ListColumn per : prices) {
                for (ListColumn pack : table.columns(Meaning.PACK)) {
                    if (paid != per && !paid.basis().isMass()) {
                        packs(paid, pack, per).forEach(found::add);
                    }
                }
            }
        }
        return only(found);
    }

    private Stream<Found> packs(ListColumn paid, ListColumn pack, ListColumn per) {
        return masses(pack)
                .flatMap(unit -> bases(per)
                        .flatMap(basis -> product(
                                ListProduct.of(
                                        table,
                                        row -> cells.money(row, paid).value(),
                                        row -> basis.grams(),
                                        row -> cells.grams(row, pack, unit.unit()),
                                        row -> cells.money(row, per).value()),
                                paid.per(Basis.of(Basis.Kind.PACK)),
                                unit,
                                per.per(basis))));
    }

    /** @return the columns of the price (with its basis), the stock (with its unit), and the value */
    Optional<Found> value(List<ListColumn> stocks) {
        List<Found> found = new ArrayList<>();
        List<ListColumn> made = Stream.concat(
                        table.columns(Meaning.VALUE).stream(),
                        table.columns(Meaning.PRICE).stream()
                                .filter(column -> column.basis().equals(Basis.UNSAID)))
                .toList();
        for (ListColumn price : table.columns(Meaning.PRICE)) {
            for (ListColumn stock : stocks) {
                for (ListColumn value : made) {
                    if (price != value) {
                        values(price, stock, value).forEach(found::add);
                    }
                }
            }
        }
        return only(found);
    }

    private Stream<Found> values(ListColumn price, ListColumn stock, ListColumn value) {
        Stream<Found> masses = masses(stock)
                .flatMap(unit -> bases(price)
                        .flatMap(basis -> product(
                                ListProduct.of(
                                        table,
                                        row -> cells.money(row, price).value(),
                                        row -> cells.grams(row, stock, unit.unit()),
                                        row -> basis.grams(),
                                        row -> cells.money(row, value).value()),
                                price.per(basis),
                                unit,
                                value)));
        return price.basis().isMass() ? masses : Stream.concat(masses, packed(price, stock, value));
    }

    private Stream<Found> packed(ListColumn price, ListColumn stock, ListColumn value) {
        return table.columns(Meaning.PACK).stream()
                .filter(cells::isWithUnits)
                .flatMap(pack -> masses(stock)
                        .flatMap(unit -> product(
                                ListProduct.of(
                                        table,
                                        row -> cells.money(row, price).value(),
                                        row -> cells.grams(row, stock, unit.unit()),
                                        row -> cells.grams(row, pack, pack.unit()),
                                        row -> cells.money(row, value).value()),
                                price.per(Basis.of(Basis.Kind.PACK)),
                                unit,
                                value)));
    }

    private static Stream<Found> product(ListProduct product, ListColumn price, ListColumn mass, ListColumn made) {
        return product.holds()
                ? Stream.of(new Found(price, mass, made, new HashSet<>(product.broken())))
                : Stream.empty();
    }

    /** A column of masses with the units that it may have. */
    private Stream<ListColumn> masses(ListColumn column) {
        return cells.isWithUnits(column)
                ? Stream.of(column)
                : Stream.of(column.in(Optional.of(Unit.GRAM)), column.in(Optional.of(Unit.KILOGRAM)));
    }

    private static Stream<Basis> bases(ListColumn price) {
        return price.basis().isMass()
                ? Stream.of(price.basis())
                : Stream.of(1000, 100, 1).map(grams -> Basis.of(BigDecimal.valueOf(grams)));
    }

    /** What is found in one way only, as far as it was not said by the headings. */
    private static Optional<Found> only(List<Found> found) {
        List<Found> distinct = found.stream()
                .filter(one -> found.stream()
                        .noneMatch(other -> other != one
                                && other.broken().size() < one.broken().size()))
                .toList();
        return distinct.size() == 1 ? Optional.of(distinct.get(0)) : Optional.empty();
    }
}
