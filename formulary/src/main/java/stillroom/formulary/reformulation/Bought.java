package stillroom.formulary.reformulation;

import stillroom.formulary.material.Material;

/**
 * A material of the library that is not on the shelf, bought so that a formula exists.
 *
 * @param percent of it in the answer
 * @param priced its price is known; where it is not, no cost was asked of the answer
 * @param changePercent sum of the changes of the substances in the pot, more or less [% of the formula]
 */
public record Bought(Material card, double percent, boolean priced, double changePercent, Answer answer) {}
