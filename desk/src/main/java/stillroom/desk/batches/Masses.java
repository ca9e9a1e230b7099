package stillroom.desk.batches;

import java.math.BigDecimal;
import java.math.RoundingMode;
import stillroom.desk.shell.Format;
import stillroom.formulary.quantity.Grams;

/** Masses that no balance showed, such as parts of a mixture: rounded, without zeros at the end. */
public final class Masses {
    /** As fine as the finest balance of a small workshop. */
    private static final int DECIMALS = 3;

    private Masses() {}

    public static String shown(Grams mass) {
        BigDecimal rounded = mass.value().setScale(DECIMALS, RoundingMode.HALF_EVEN);
        return Format.grams(new Grams(rounded));
    }
}
