package stillroom.science.weighing;

import java.math.BigDecimal;
import java.math.MathContext;

/** How much to make so that enough is left to fill. */
public final class MixtureMass {
    private MixtureMass() {}

    /**
     * (containers * fill + set aside) / (1 - loss), to 34 digits [g]. The loss is a share of what is made, so it
     * divides: adding it to what is filled would come out short.
     *
     * @param fillEach net contents of one container, overfill included [g]
     * @param setAside samples and retained packs together [g]
     * @param lossPercent share of what is made that stays behind, 0 up to but not 100 [%]
     */
    public static BigDecimal toFill(int containers, BigDecimal fillEach, BigDecimal setAside, BigDecimal lossPercent) {
        BigDecimal kept = BigDecimal.valueOf(100).subtract(lossPercent);
        if (lossPercent.signum() < 0 || kept.signum() <= 0) {
            throw new IllegalArgumentException(
                    "loss is " + lossPercent.toPlainString() + " %, allowed 0 to below 100 %");
        }
        return fillEach.multiply(BigDecimal.valueOf(containers))
                .add(setAside)
                .movePointRight(2)
                .divide(kept, MathContext.DECIMAL128);
    }

    /** Net contents by mass: declared millilitres times the measured density as filled, plus the chosen overfill [g]. */
    public static BigDecimal fill(BigDecimal millilitres, BigDecimal gramsPerMillilitre, BigDecimal overfill) {
        return millilitres.multiply(gramsPerMillilitre).add(overfill);
    }
}
