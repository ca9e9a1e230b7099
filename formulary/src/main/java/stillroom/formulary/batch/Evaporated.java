package stillroom.formulary.batch;

import stillroom.formulary.quantity.Grams;

/**
 * What evaporated from the product, and whether it may count as water.
 *
 * @param asWater only where water is in and nothing else that is volatile
 * @param says the reason, one sentence; empty where nothing was lost
 */
public record Evaporated(Grams lost, boolean asWater, String says) {}
