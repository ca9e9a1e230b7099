package stillroom.science.weighing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * The least larger whole in which every part can be within its tolerance again after one was overshot, when parts can
 * only be added to.
 */
public final class LeastLarger {
    private static final MathContext UP = new MathContext(34, RoundingMode.CEILING);

    private LeastLarger() {}

    /**
     * One part.
     *
     * @param fraction its share of the whole, above 0; all fractions add up to 1
     * @param tolerance how far it may be off, as a fraction of itself, 0 up to but not 1
     * @param there what is in already, not negative [g]
     */
    public record Part(BigDecimal fraction, BigDecimal tolerance, BigDecimal there) {
        BigDecimal least(BigDecimal whole) {
            return whole.multiply(fraction).multiply(BigDecimal.ONE.subtract(tolerance));
        }

        BigDecimal most(BigDecimal whole) {
            return whole.multiply(fraction).multiply(BigDecimal.ONE.add(tolerance));
        }
    }

    /**
     * The least whole M, not below {@code planned}, for which masses x exist with x at least what is there, each x
     * within its tolerance of fraction times M, and the sum of x equal to M [g]. Such x exist exactly when no part is
     * above its most and the least that must be there does not exceed M; both grow with M, so the least M is found by
     * letting the parts that still determine it drop out one after the other.
     */
    public static BigDecimal whole(List<Part> parts, BigDecimal planned) {
        BigDecimal whole = planned;
        for (Part part : parts) {
            BigDecimal perWhole = part.most(BigDecimal.ONE);
            whole = whole.max(part.there().divide(perWhole, UP));
        }
        BigDecimal needed = least(parts, whole);
        while (needed.compareTo(whole) > 0) {
            whole = balanced(parts, whole);
            needed = least(parts, whole);
        }
        return whole;
    }

    /** Where the least needed equals the whole if the same parts as now stay above their own least. */
    private static BigDecimal balanced(List<Part> parts, BigDecimal whole) {
        BigDecimal fixed = BigDecimal.ZERO;
        BigDecimal perWhole = BigDecimal.ZERO;
        for (Part part : parts) {
            if (part.there().compareTo(part.least(whole)) > 0) {
                fixed = fixed.add(part.there());
            } else {
                perWhole = perWhole.add(part.least(BigDecimal.ONE));
            }
        }
        return fixed.divide(BigDecimal.ONE.subtract(perWhole), UP);
    }

    private static BigDecimal least(List<Part> parts, BigDecimal whole) {
        BigDecimal sum = BigDecimal.ZERO;
        for (Part part : parts) {
            sum = sum.add(part.there().max(part.least(whole)));
        }
        return sum;
    }

    /**
     * Final masses in a whole that is large enough: as near to their shares as what is there allows; what overshot
     * parts take too much is taken from the others in proportion to the room that their tolerances leave [g].
     */
    public static List<BigDecimal> masses(List<Part> parts, BigDecimal whole) {
        List<BigDecimal> masses = new ArrayList<>();
        BigDecimal excess = whole.negate();
        BigDecimal room = BigDecimal.ZERO;
        for (Part part : parts) {
            BigDecimal mass = part.there().max(whole.multiply(part.fraction()));
            masses.add(mass);
            excess = excess.add(mass);
            room = room.add(mass.subtract(part.there().max(part.least(whole))));
        }
        if (excess.signum() <= 0 || room.signum() <= 0) {
            return masses;
        }
        BigDecimal give = excess.divide(room, MathContext.DECIMAL128).min(BigDecimal.ONE);
        for (int i = 0; i < masses.size(); i++) {
            Part part = parts.get(i);
            BigDecimal own = masses.get(i).subtract(part.there().max(part.least(whole)));
            masses.set(i, masses.get(i).subtract(own.multiply(give, MathContext.DECIMAL128)));
        }
        return masses;
    }
}
