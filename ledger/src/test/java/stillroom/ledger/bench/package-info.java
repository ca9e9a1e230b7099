/** A generated large workshop and how long its questions take; run by a script, never by the check. */
@org.jspecify.annotations.NullMarked
package stillroom.ledger.bench;
