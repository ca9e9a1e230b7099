package stillroom.formulary.reformulation;

/**
 * One point of a trade-off curve.
 *
 * @param cost per 100 g
 * @param change sum of changes, half of which is put in and half taken out [% of the formula]
 */
public record TradeOff(Answer answer, double cost, double change) {}
