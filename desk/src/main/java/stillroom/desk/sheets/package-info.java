/** Sheets designed as print: recipe, batch record, label; each an HTML template set as PDF. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.sheets;
