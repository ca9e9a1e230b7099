/** Spreadsheets brought in: what was understood, every guess changeable, nothing stored before the maker says so. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.imports;
