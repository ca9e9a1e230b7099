package stillroom.formulary.formula;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/**
 * One version of a product's formula.
 *
 * @param number 1, 2, 3 ... within the product
 * @param edit counts saved changes, so that a stale tab is noticed
 * @param kept once true (a batch was made from it, or the maker kept it) nothing of it changes again
 * @param basedOn number of the version it began as a copy of
 * @param cards for each material key the card revision that is meant; filled when the version is kept
 */
public record FormulaVersion(
        long productId,
        int number,
        int edit,
        boolean kept,
        Optional<Integer> basedOn,
        String why,
        Instant createdAt,
        Formula formula,
        Map<String, Integer> cards) {
    public FormulaVersion {
        cards = Map.copyOf(cards);
    }
}
