/** Spreadsheets as people keep them, and what must be made of them. */
@org.jspecify.annotations.NullMarked
package stillroom.ledger.imports;
