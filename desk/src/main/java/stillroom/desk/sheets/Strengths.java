package stillroom.desk.sheets;

import java.util.Optional;
import stillroom.desk.shell.Format;
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
}
