package stillroom.formulary.meter;

import java.util.Optional;

/**
 * A pH meter with its electrode.
 *
 * @param name as the maker calls it at the bench and writes it beside readings
 * @param repeatability standard deviation of repeated readings [pH]
 * @param holdsHours how long a calibration holds; empty: for the day on which it was made [h]
 */
public record PhMeter(String name, double repeatability, Optional<Integer> holdsHours) {
    /** Usual of a bench meter with a sound electrode. Common practice, no source [pH]. */
    public static final double USUAL_REPEATABILITY = 0.02;

    public PhMeter {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a meter needs a name");
        }
        if (!(repeatability > 0 && repeatability <= 1)) {
            throw new IllegalArgumentException("repeatability is " + repeatability + " pH, allowed: above 0 to 1");
        }
        if (holdsHours.filter(hours -> hours < 1).isPresent()) {
            throw new IllegalArgumentException("a calibration holds " + holdsHours.get() + " h, allowed: 1 and more");
        }
    }
}
