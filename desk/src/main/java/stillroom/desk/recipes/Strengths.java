package stillroom.desk.recipes;

import java.math.BigDecimal;
import java.util.Optional;
import stillroom.desk.shell.Format;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Strength;
import stillroom.formulary.quantity.PercentRange;

/** A strength in words, with its basis, where it says more than that the material is pure. */
final class Strengths {
    private Strengths() {}

    static Optional<String> words(Strength strength) {
        if (strength.basis() == Strength.Basis.ASSAY_AS_IS) {
            return Optional.empty();
        }
        PercentRange range = strength.percent();
        String figure = range.isPoint() ? range.low().toString() : range.low() + " to " + range.high();
        return Optional.of(figure + " % " + Format.words(strength.basis()));
    }

    /** The middle of the range on the card, for which a recipe is written; empty where no strength above 0 is stated [%]. */
    static Optional<BigDecimal> middle(Material card) {
        return card.strength()
                .map(Strength::percent)
                .map(range -> range.middle().value())
                .filter(middle -> middle.signum() > 0);
    }
}
