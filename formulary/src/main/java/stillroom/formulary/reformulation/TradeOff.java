package stillroom.formulary.reformulation;

/**
 * One point of a trade-off curve.
 *
 * @param first, second what the answer has of the two measures of the curve
 */
public record TradeOff(Answer answer, double first, double second) {}
