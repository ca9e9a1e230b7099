package stillroom.formulary.reformulation;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What may be poured.
 *
 * @param onHand grams by material key; a material that is not named is not on the shelf
 * @param batchGrams mass of the batch for which the shelf must suffice; where absent amounts do not matter
 */
public record Shelf(Map<String, Double> onHand, OptionalDouble batchGrams) {
    public Shelf {
        onHand = Map.copyOf(onHand);
    }

    /** The same with so many grams of one material. */
    Shelf with(String materialKey, double grams) {
        Map<String, Double> more = new HashMap<>(onHand);
        more.put(materialKey, grams);
        return new Shelf(more, batchGrams);
    }

    /** Greatest mass fraction for which the shelf suffices. */
    double most(String materialKey) {
        double grams = onHand.getOrDefault(materialKey, 0.0);
        return batchGrams.isPresent() ? Math.max(0, Math.min(1, grams / batchGrams.getAsDouble())) : 1;
    }
}
