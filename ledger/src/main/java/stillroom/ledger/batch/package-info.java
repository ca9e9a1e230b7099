/** Batches, their append-only logs, and where lots went. */
@org.jspecify.annotations.NullMarked
package stillroom.ledger.batch;
