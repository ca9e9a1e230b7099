package stillroom.science.weighing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.hipparchus.distribution.continuous.TDistribution;

/** The packer's rules for prepacked goods of equal nominal quantity. Not legal advice: the law of the place decides. */
public final class NetContents {
    private static final BigDecimal LEAST = BigDecimal.valueOf(5);
    private static final BigDecimal MOST = BigDecimal.valueOf(10_000);
    private static final double CONFIDENCE = 0.995;

    private NetContents() {}

    /**
     * How much less than the nominal quantity a single container may hold before it counts as deficient; where it is a
     * percentage it is rounded up to the next tenth [g or ml].
     *
     * <p>Source: Council Directive 76/211/EEC, annex I, 2.4; the table from memory, its ends join without a jump.
     *
     * @param nominal 5 to 10 000 [g or ml]
     */
    public static BigDecimal tolerableNegativeError(BigDecimal nominal) {
        if (nominal.compareTo(LEAST) < 0 || nominal.compareTo(MOST) > 0) {
            throw new IllegalArgumentException(
                    "nominal quantity is " + nominal.toPlainString() + ", the table covers 5 to 10000 g or ml");
        }
        if (upTo(nominal, 50)) {
            return share(nominal, "9");
        }
        if (upTo(nominal, 100)) {
            return new BigDecimal("4.5");
        }
        if (upTo(nominal, 200)) {
            return share(nominal, "4.5");
        }
        if (upTo(nominal, 300)) {
            return BigDecimal.valueOf(9);
        }
        if (upTo(nominal, 500)) {
            return share(nominal, "3");
        }
        return upTo(nominal, 1000) ? BigDecimal.valueOf(15) : share(nominal, "1.5");
    }

    private static boolean upTo(BigDecimal nominal, int bound) {
        return nominal.compareTo(BigDecimal.valueOf(bound)) <= 0;
    }

    private static BigDecimal share(BigDecimal nominal, String percent) {
        return nominal.multiply(new BigDecimal(percent)).movePointLeft(2).setScale(1, RoundingMode.CEILING);
    }

    /**
     * What the standard deviation is multiplied by in the test of the average: t(0.995, n - 1) / root n.
     *
     * <p>Source: Council Directive 76/211/EEC, annex II, 2.3.
     *
     * @param containers number weighed, at least 2
     */
    public static double averageFactor(int containers) {
        if (containers < 2) {
            throw new IllegalArgumentException("containers weighed are " + containers + ", at least 2 are needed");
        }
        double t = new TDistribution(containers - 1.0).inverseCumulativeProbability(CONFIDENCE);
        return t / Math.sqrt(containers);
    }

    /** The least mean at which the average still passes: nominal less factor times standard deviation [g or ml]. */
    public static double leastMean(double nominal, double standardDeviation, int containers) {
        return nominal - standardDeviation * averageFactor(containers);
    }
}
