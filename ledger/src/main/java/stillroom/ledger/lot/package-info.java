/** Lots on the shelf and what is left of them. */
@org.jspecify.annotations.NullMarked
package stillroom.ledger.lot;
