/** The law as recorded, and what another day of it changes: for one product, and for every stored formula. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.law;
