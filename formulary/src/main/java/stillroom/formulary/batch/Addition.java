package stillroom.formulary.batch;

import stillroom.formulary.quantity.Grams;

/** So much more of a line [g]. */
public record Addition(String lineId, String materialKey, Grams mass) {}
