/** Copies of the whole workshop, and back. */
@org.jspecify.annotations.NullMarked
package stillroom.ledger.backup;
