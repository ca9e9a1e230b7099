package stillroom.formulary.judgement.pot;

import java.util.Optional;
import stillroom.formulary.material.Material;
import stillroom.formulary.quantity.Interval;

/**
 * How far materials of which only the pH as supplied is known may pull the product's pH towards their own.
 *
 * <p>Their buffering is not on the card; {@value #USUAL_CAPACITY} mol per kilogram of material and pH is assumed, what a
 * surfactant or an extract usually has (an estimate, no source). It widens the interval and moves nothing else.
 *
 * @param pH of the product as computed without them
 * @param capacity of the product without them, per kilogram of it [mol/(kg pH)]
 */
record OwnPhPull(double pH, double capacity) {
    private static final double USUAL_CAPACITY = 0.005;
    private static final double LEAST_SHARE = 0.002;

    Optional<Spread> of(Item item) {
        double share = item.portion().share().nominal();
        Optional<Interval> own = item.material().filter(OwnPhPull::buffers).flatMap(Material::ownPh);
        if (own.isEmpty() || share <= LEAST_SHARE) {
            return Optional.empty();
        }
        double weight = share * USUAL_CAPACITY / (capacity + share * USUAL_CAPACITY);
        return Optional.of(Spread.between(
                "the buffering of " + item.name() + ", which is not on its card",
                weight * (own.get().low() - pH),
                weight * (own.get().high() - pH)));
    }

    /** Water and solvents take on any pH. */
    private static boolean buffers(Material card) {
        return switch (card.family()) {
            case WATER, SOLVENT, HUMECTANT, OIL, BUTTER, WAX, FRAGRANCE, SALT -> false;
            case SURFACTANT,
                    EMULSIFIER,
                    THICKENER,
                    PRESERVATIVE,
                    ACID,
                    BASE,
                    CHELATOR,
                    ACTIVE,
                    COLOURANT,
                    CONDITIONER,
                    POWDER,
                    OTHER -> true;
        };
    }
}
