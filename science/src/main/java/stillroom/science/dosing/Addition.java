package stillroom.science.dosing;

/**
 * A corrector poured into a vessel.
 *
 * @param corrector as poured
 * @param grams all of it so far, not the last pour alone [g]
 */
public record Addition(Corrector corrector, double grams) {
    public Addition {
        if (!(grams >= 0 && grams < 1e9)) {
            throw new IllegalArgumentException("grams of " + corrector.name() + " is " + grams + " g, allowed: from 0");
        }
    }
}
