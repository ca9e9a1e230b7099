package stillroom.science.blend;

/**
 * What one ingredient adds to the objective: {@code perFraction} for each unit of its mass fraction x, {@code whenUsed} once
 * where x is above 0, and {@code perChange} for each unit of |x - now|. Any unit, the same for all ingredients.
 *
 * @param perChange not negative, so that the objective stays convex
 * @param whenUsed not negative
 * @param now the fraction from which a change is counted, 0 to 1
 */
public record Cost(double perFraction, double whenUsed, double perChange, double now) {
    public static final Cost NONE = new Cost(0, 0, 0, 0);

    public Cost {
        if (!Double.isFinite(perFraction)) {
            throw new IllegalArgumentException("the cost is " + perFraction + ", must be a finite number");
        }
        if (!(whenUsed >= 0 && perChange >= 0 && Double.isFinite(whenUsed) && Double.isFinite(perChange))) {
            throw new IllegalArgumentException(
                    "the cost when used is " + whenUsed + " and per change " + perChange + ", must be 0 or more");
        }
        if (!(now >= 0 && now <= 1)) {
            throw new IllegalArgumentException("the present fraction is " + now + ", must be 0 to 1");
        }
    }

    public static Cost perFraction(double cost) {
        return new Cost(cost, 0, 0, 0);
    }

    double of(double fraction) {
        return perFraction * fraction + (fraction > 0 ? whenUsed : 0) + perChange * Math.abs(fraction - now);
    }
}
