/** Spreadsheets through the pages: what is shown, what is stored, what is refused. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.imports;
