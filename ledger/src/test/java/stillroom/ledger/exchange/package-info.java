/** Formula files: examples, faults, round trips. */
@org.jspecify.annotations.NullMarked
package stillroom.ledger.exchange;
