/** The written form of every record, shared by the store, the export and formula files. */
@org.jspecify.annotations.NullMarked
package stillroom.ledger.json;
