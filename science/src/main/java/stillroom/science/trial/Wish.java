package stillroom.science.trial;

/**
 * What is wanted of one response: a desirability of 0 at the worst still bearable, 1 at the best.
 *
 * @param aim which way
 * @param low lower end; for SMALLER already perfect, for others worthless below [unit of the response]
 * @param target wanted value of TARGET [unit of the response]
 * @param high upper end; for LARGER already perfect, for others worthless above [unit of the response]
 * @param weight importance against the other responses
 */
public record Wish(Aim aim, double low, double target, double high, double weight) {
    public Wish {
        if (!(low < high) || !(weight > 0) || (aim == Aim.TARGET && !(low <= target && target <= high))) {
            throw new IllegalArgumentException("a wish from " + low + " over " + target + " to " + high
                    + " with weight " + weight + " is not in order");
        }
    }

    /** Which way a response is wanted. */
    public enum Aim {
        LARGER,
        SMALLER,
        TARGET
    }

    /** Desirability of a value, 0..1. Source: derringer-1980, linear. */
    public double desirability(double value) {
        double share = switch (aim) {
            case LARGER -> (value - low) / (high - low);
            case SMALLER -> (high - value) / (high - low);
            case TARGET -> value <= target ? rise(value - low, target - low) : rise(high - value, high - target);
        };
        return Math.max(0, Math.min(1, share));
    }

    private static double rise(double way, double whole) {
        return whole == 0 ? (way >= 0 ? 1 : 0) : way / whole;
    }
}
