package stillroom.ledger.batch;

import stillroom.formulary.quantity.Grams;

/** One batch that holds some of a lot, and how much, net of what was taken back or struck [g]. */
public record LotUse(BatchRow row, Grams mass) {}
