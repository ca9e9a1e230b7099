package stillroom.formulary.rule;

import stillroom.formulary.formula.ProductType;

/**
 * Daily exposure to a kind of product.
 *
 * @param product as the table names it
 * @param milligramsPerKilogramDay product that stays, per body weight and day [mg/kg/d]
 */
public record ExposureFigures(ProductType type, String product, double milligramsPerKilogramDay, String source) {}
