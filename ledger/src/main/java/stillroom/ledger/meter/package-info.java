/** Keeping the pH meters and their calibrations. */
@org.jspecify.annotations.NullMarked
package stillroom.ledger.meter;
