package stillroom.desk.sheets;

import stillroom.desk.shell.Format;
import stillroom.formulary.material.Strength;
import stillroom.formulary.quantity.PercentRange;

/** A strength in words, with its basis. */
final class Strengths {
    private Strengths() {}

    static String words(Strength strength) {
        PercentRange range = strength.percent();
        String figure = range.isPoint() ? range.low().toString() : range.low() + " to " + range.high();
        return figure + " % " + Format.words(strength.basis());
    }
}
