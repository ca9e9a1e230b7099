package stillroom.formulary.dosing;

import java.util.Optional;
import stillroom.formulary.quantity.Grams;

/** Acid or base of one bottle that stands in a bulk [g]. */
public record InBulk(String materialKey, Optional<String> lot, Grams mass) {}
