/** Spreadsheet files into cells, within bounds, and the maker's remembered decisions about names. */
@org.jspecify.annotations.NullMarked
package stillroom.ledger.imports;
