package stillroom.desk.batches.bench;

import java.util.Optional;

/** The usual cautions of the bench. Common practice, no source; local rules and the safety sheet come first. */
final class Cautions {
    private static final double SCALDS_CELSIUS = 60;

    private Cautions() {}

    static Optional<String> ofHeat(Optional<Double> celsius) {
        return celsius.filter(c -> c >= SCALDS_CELSIUS)
                .map(
                        c ->
                                "Hot: it scalds and sticks to the skin. Gloves and goggles, handles turned away, nothing that burns near the plate.");
    }
}
