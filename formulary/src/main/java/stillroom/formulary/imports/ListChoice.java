package stillroom.formulary.imports;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Which columns of a list give price, pack and stock, and what was guessed about them.
 *
 * @param price with what it is for
 * @param pack with its unit
 * @param stock with its unit
 * @param priceDoubts what was guessed about each price, in sentences
 * @param stockDoubts what was guessed about each amount on the shelf
 * @param rowDoubts what was made nothing of and may have been meant in each row
 * @param proven whether the figures themselves bear it out: price times stock makes the value, or price over pack that per kg
 * @param broken rows in which they do not
 */
record ListChoice(
        Optional<ListColumn> price,
        Optional<ListColumn> pack,
        Optional<ListColumn> stock,
        List<String> priceDoubts,
        List<String> stockDoubts,
        List<String> rowDoubts,
        boolean proven,
        Set<Integer> broken) {
    ListChoice {
        priceDoubts = List.copyOf(priceDoubts);
        stockDoubts = List.copyOf(stockDoubts);
        rowDoubts = List.copyOf(rowDoubts);
        broken = Set.copyOf(broken);
    }
}
