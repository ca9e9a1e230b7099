/** Understanding the tables of others: which cells of a spreadsheet are names, amounts, phases, totals, and how sure that is. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.imports;
