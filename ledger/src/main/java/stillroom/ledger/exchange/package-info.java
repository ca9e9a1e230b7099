/** Formulas as files that stand by themselves: read, written, and led to the materials that they mean. Pure. */
@org.jspecify.annotations.NullMarked
package stillroom.ledger.exchange;
