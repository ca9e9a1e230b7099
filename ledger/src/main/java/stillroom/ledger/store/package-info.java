/** The file itself: connections, transactions, migrations, and what can be wrong with it. */
@org.jspecify.annotations.NullMarked
package stillroom.ledger.store;
