package stillroom.formulary.plan;

import stillroom.formulary.quantity.Percent;

/**
 * A dilution that the workshop makes for itself, so that little can be weighed as much.
 *
 * @param materialKey the card of the premix
 * @param productId the product under which its batches are made
 * @param concentrateKey what is diluted: a raw material or another premix
 * @param carrierKey in what
 * @param share of the concentrate as planned [% of the premix]
 */
public record PremixRecipe(
        String materialKey, long productId, String concentrateKey, String carrierKey, Percent share) {}
