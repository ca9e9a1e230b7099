package stillroom.formulary.batch;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Step;

/**
 * Whether two vessels should be combined now: after a hot process both logged at their target and within 5 degrees of
 * each other (common practice, no source); otherwise at any time.
 */
final class Combining {
    private static final double CLOSE_CELSIUS = 5;
    private static final double WARM_CELSIUS = 40;

    private Combining() {}

    static NextAction.Combine of(Vessel from, Vessel into, List<Phase> fromPhases) {
        Optional<Double> hot = target(fromPhases);
        if (hot.isEmpty()) {
            String warm =
                    into.celsius().filter(celsius -> celsius >= WARM_CELSIUS).isPresent() ? " " + seen(into) + "." : "";
            return new NextAction.Combine(from.name(), into.name(), true, "No heat is asked for." + warm);
        }
        Optional<String> against = against(from, into, hot.get());
        return new NextAction.Combine(
                from.name(),
                into.name(),
                against.isEmpty(),
                against.orElseGet(() -> seen(from) + ", " + seen(into) + "; asked " + whole(hot.get()) + " °C."));
    }

    private static Optional<String> against(Vessel from, Vessel into, double target) {
        for (Vessel vessel : List.of(from, into)) {
            if (vessel.celsius().isEmpty()) {
                return Optional.of("No temperature of " + vessel.name() + " is logged.");
            }
            if (vessel.celsius().get() < target - CLOSE_CELSIUS) {
                return Optional.of(seen(vessel) + "; asked " + whole(target) + " °C.");
            }
        }
        double apart = Math.abs(from.celsius().orElse(0.0) - into.celsius().orElse(0.0));
        return apart <= CLOSE_CELSIUS
                ? Optional.empty()
                : Optional.of("They are " + whole(apart) + " °C apart; 5 °C is close enough.");
    }

    private static String seen(Vessel vessel) {
        return vessel.name() + " was last seen at "
                + vessel.celsius().map(Combining::whole).orElse("?") + " °C";
    }

    /** The highest temperature asked for where heat is meant; below 40 degrees is no hot process. */
    private static Optional<Double> target(List<Phase> phases) {
        return phases.stream()
                .flatMap(phase -> phase.steps().stream())
                .map(Step::celsius)
                .flatMap(Optional::stream)
                .filter(celsius -> celsius >= WARM_CELSIUS)
                .max(Double::compare);
    }

    private static String whole(double celsius) {
        return Long.toString(Math.round(celsius));
    }
}
