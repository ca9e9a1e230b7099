package stillroom.science.dosing;

import java.util.List;

/**
 * A pH read after what had been added until then.
 *
 * @param vessel sample or bulk
 * @param liquidGrams the liquid itself, without the additions [g]
 * @param additions everything added so far
 * @param pH as read
 */
public record PhReading(Vessel vessel, double liquidGrams, List<Addition> additions, double pH) {
    public PhReading {
        additions = List.copyOf(additions);
    }

    double addedGrams() {
        return additions.stream().mapToDouble(Addition::grams).sum();
    }
}
