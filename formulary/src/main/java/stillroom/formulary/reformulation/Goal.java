package stillroom.formulary.reformulation;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What is to be made best, as weights: the sum of changes (in parts of the whole formula), the cost (in parts of the present
 * cost), natural origin (in parts of the whole), the count of ingredients (in twentieths), and how far figures leave the
 * middle of their bands (see {@link Band}).
 */
public record Goal(double change, double cost, double natural, double count, double figures) {
    /** The other figures matter only where two formulas are equal in the first. */
    static final double TIE = 1e-4;

    static final Goal NOTHING = new Goal(0, 0, 0, 0, 0);

    public static final Goal LEAST_CHANGE = new Goal(1, 0, 0, 0.02, 1);
    public static final Goal LOWEST_COST = new Goal(TIE, 1, 0, 0, TIE);
    public static final Goal MOST_NATURAL = new Goal(TIE, 0, 1, 0, TIE);
    public static final Goal FEWEST = new Goal(TIE, 0, 0, 1, TIE);

    public Goal {
        if (!(change >= 0 && cost >= 0 && natural >= 0 && count >= 0 && figures >= 0)) {
            throw new IllegalArgumentException("The weight of a goal must be 0 or more.");
        }
    }

    /** Weights in any proportion; equals are decided by the smaller change. */
    public static Goal mix(double change, double cost, double natural, double count) {
        double sum = change + cost + natural + count;
        if (!(sum > 0)) {
            throw new IllegalArgumentException("At least one weight of the mix must be above 0.");
        }
        return new Goal(
                Math.max(TIE, change / sum), cost / sum, natural / sum, count / sum, Math.max(TIE, change / sum));
    }

    Goal with(Measure measure, double weight) {
        return switch (measure) {
            case CHANGE -> new Goal(weight, cost, natural, count, figures);
            case COST -> new Goal(change, weight, natural, count, figures);
            case NATURAL -> new Goal(change, cost, weight, count, figures);
            case COUNT -> new Goal(change, cost, natural, weight, figures);
        };
    }

    double weight(Measure measure) {
        return switch (measure) {
            case CHANGE -> change;
            case COST -> cost;
            case NATURAL -> natural;
            case COUNT -> count;
        };
    }

    /** It counts for more than between equals. */
    boolean weighs(Measure measure) {
        return weight(measure) > TIE;
    }

    /** The one measure that counts, where it is one, and not how little changes. */
    Optional<Measure> only() {
        List<Measure> counts =
                Arrays.stream(Measure.values()).filter(this::weighs).toList();
        return counts.size() == 1 && counts.get(0) != Measure.CHANGE ? Optional.of(counts.get(0)) : Optional.empty();
    }

    boolean asksCost() {
        return cost > 0;
    }
}
