/** Lots: received, opened, counted, held back and used up, first expired first. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.lots;
