package stillroom.formulary.dosing;

import java.util.Optional;
import stillroom.science.dosing.Instrument;

/**
 * Where the pH of a bulk should go, and by what means.
 *
 * @param corrector key of the material to pour
 * @param lot from which lot, where it is booked
 * @param target where the pH should be
 * @param halfBand how far from it is still right, to either side
 * @param instrument what is read and weighed with
 */
public record PhWish(String corrector, Optional<String> lot, double target, double halfBand, Instrument instrument) {}
