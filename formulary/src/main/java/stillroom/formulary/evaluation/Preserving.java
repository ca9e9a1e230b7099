package stillroom.formulary.evaluation;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.rule.Organisms;

/**
 * All that is reckoned about what keeps a product, over a span of pH; figures and gaps, never a verdict.
 *
 * @param ph by which the product is judged; empty where none is known
 * @param states the preservatives there; empty where no pH or no water phase is known
 * @param curve the preservatives at rising pH, to be drawn
 * @param waterActivity from humectants and salt, or why it is not known
 * @param growth the water activity beside the least at which each group has been seen to grow
 * @param boosters names of what helps but stands on no legal list of preservatives; not counted
 */
public record Preserving(
        Optional<Interval> ph,
        List<PreservativeState> states,
        List<AtPh> curve,
        Outcome<Figure> waterActivity,
        List<Growth> growth,
        List<String> boosters) {
    /** What no figure here can replace. */
    public static final String CHALLENGE =
            "Only a challenge test shows that a product is preserved. These figures show where a gap must be, not that"
                    + " there is none.";

    public Preserving {
        states = List.copyOf(states);
        curve = List.copyOf(curve);
        growth = List.copyOf(growth);
        boosters = List.copyOf(boosters);
    }

    /** The preservatives at one pH, in the order of {@code states}. */
    public record AtPh(double ph, List<PreservativeState> states) {
        public AtPh {
            states = List.copyOf(states);
        }
    }

    /**
     * One group of organisms.
     *
     * @param least water activity at which members of the group have been seen to grow, driest first [-]
     * @param organism that manages with the least
     * @param standing of the product's water activity, at its wetter end
     */
    public record Growth(Organisms group, Interval least, String organism, Standing standing, String source) {}

    /** Where a water activity stands beside the least figures of a group. */
    public enum Standing {
        /** Drier than all of them have been seen to grow. */
        HURDLE,
        /** Some of the group have been seen to grow there. */
        SOME_GROW,
        /** No hurdle. */
        ALL_GROW
    }
}
