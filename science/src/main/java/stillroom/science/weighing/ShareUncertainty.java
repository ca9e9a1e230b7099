package stillroom.science.weighing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/** How well a share of a mixture is known from the weighings that made it. */
public final class ShareUncertainty {
    private static final MathContext DIGITS = MathContext.DECIMAL64;

    private ShareUncertainty() {}

    /** One part of a mixture as weighed: its mass and the standard uncertainty of that mass [g]. */
    public record Weighed(BigDecimal mass, BigDecimal deviation) {}

    /**
     * Standard uncertainty of the share of one part, where the whole is the sum of the weighed parts:
     * u = 100 / M * sqrt((1 - p)^2 u_i^2 + p^2 * sum of the other u_j^2), p the share as a fraction [% of the whole].
     * Weighings are taken as independent.
     *
     * <p>Source: JCGM 100:2008 (GUM), 5.1.2, law of propagation of uncertainty, applied to m_i / sum of m_j.
     *
     * @param parts all parts; their sum above 0
     * @param index which part is asked
     */
    public static BigDecimal percent(List<Weighed> parts, int index) {
        BigDecimal whole = BigDecimal.ZERO;
        BigDecimal others = BigDecimal.ZERO;
        for (int j = 0; j < parts.size(); j++) {
            whole = whole.add(parts.get(j).mass());
            if (j != index) {
                others = others.add(square(parts.get(j).deviation()));
            }
        }
        BigDecimal share = parts.get(index).mass().divide(whole, DIGITS);
        BigDecimal variance = square(BigDecimal.ONE.subtract(share))
                .multiply(square(parts.get(index).deviation()))
                .add(square(share).multiply(others));
        return variance.sqrt(DIGITS).movePointRight(2).divide(whole, DIGITS);
    }

    private static BigDecimal square(BigDecimal value) {
        return value.multiply(value);
    }
}
