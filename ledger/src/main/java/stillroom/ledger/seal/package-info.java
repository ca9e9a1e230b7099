/** What a batch record refers to, covered by the hash of its log, and the search for what was altered. */
@org.jspecify.annotations.NullMarked
package stillroom.ledger.seal;
