package stillroom.desk.reformulation;

import java.util.List;
import stillroom.desk.shell.Input;
import stillroom.formulary.reformulation.Goal;

/** What is to be made best. */
enum Aim {
    CHANGE("The least change"),
    COST("The lowest cost"),
    NATURAL("The most of guaranteed natural origin"),
    FEW("The fewest ingredients"),
    MIX("A mix, weighed as below");

    private static final List<String> WEIGHTS = List.of("weigh-change", "weigh-cost", "weigh-natural", "weigh-count");
    private static final List<Double> USUAL = List.of(50.0, 50.0, 0.0, 0.0);

    private final String words;

    Aim(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    Goal goal(Input input) {
        return switch (this) {
            case CHANGE -> Goal.LEAST_CHANGE;
            case COST -> Goal.LOWEST_COST;
            case NATURAL -> Goal.MOST_NATURAL;
            case FEW -> Goal.FEWEST;
            case MIX -> mix(input);
        };
    }

    private static Goal mix(Input input) {
        double[] weights = new double[WEIGHTS.size()];
        double sum = 0;
        for (int k = 0; k < weights.length; k++) {
            String field = WEIGHTS.get(k);
            weights[k] = input.has(field)
                    ? input.number(field, "The weight", "0", "1000").orElse(0.0)
                    : USUAL.get(k);
            sum += weights[k];
        }
        if (sum == 0) {
            input.refuse(WEIGHTS.get(0), "At least one weight of the mix must be above 0.");
            return Goal.LEAST_CHANGE;
        }
        return Goal.mix(weights[0], weights[1], weights[2], weights[3]);
    }
}
