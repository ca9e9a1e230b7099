package stillroom.formulary.judgement.pot;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.material.Material;

/**
 * Natural origin content by ISO 16128-2: the sum of mass percent times each card's index [%].
 *
 * <p>Only where every card has an index; a missing one does not pass as 0 or 1.
 */
final class NaturalOrigin {
    private NaturalOrigin() {}

    static Optional<Figure> of(List<Item> items) {
        double low = 0;
        double nominal = 0;
        double high = 0;
        for (Item item : items) {
            Optional<Double> index = item.material().flatMap(Material::naturalOriginIndex);
            if (index.isEmpty() && item.portion().share().upper() > 0) {
                return Optional.empty();
            }
            double known = index.orElse(0.0);
            low += known * item.portion().share().lower();
            nominal += known * item.portion().share().nominal();
            high += known * item.portion().share().upper();
        }
        return items.isEmpty()
                ? Optional.empty()
                : Optional.of(new Figure(
                        "Natural origin",
                        Math.min(100, low * 100),
                        Math.min(100, nominal * 100),
                        Math.min(100, high * 100),
                        "%",
                        "sum of mass percent times the card's index, water included (ISO 16128-2)",
                        List.of("ISO 16128-2:2017; indices as on the cards")));
    }
}
