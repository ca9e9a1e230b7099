package stillroom.formulary.reformulation;

/**
 * What is to be made best, as weights: the sum of changes (in parts of the whole formula), the cost (in parts of the present
 * cost), natural origin (in parts of the whole), the count of ingredients (in twentieths).
 */
public record Goal(double change, double cost, double natural, double count) {
    /** The other figures matter only where two formulas are equal in the first. */
    private static final double TIE = 1e-4;

    public static final Goal LEAST_CHANGE = new Goal(1, 0, 0, 0.02);
    public static final Goal LOWEST_COST = new Goal(TIE, 1, 0, 0);
    public static final Goal MOST_NATURAL = new Goal(TIE, 0, 1, 0);
    public static final Goal FEWEST = new Goal(TIE, 0, 0, 1);

    boolean asksCost() {
        return cost > 0;
    }

    boolean asksNatural() {
        return natural > 0;
    }
}
