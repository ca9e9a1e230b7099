package stillroom.formulary.batch;

import java.util.Optional;
import stillroom.formulary.quantity.Grams;

/**
 * What one lot gave to the batch.
 *
 * @param lot none where the bottle was not booked
 * @param added put in altogether, exact [g]
 * @param inProduct what of it is in the product: without what left with samples and bulk handed over [g]
 */
public record MadeLot(String materialKey, Optional<String> lot, Grams added, Grams inProduct) {}
