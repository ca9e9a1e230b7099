/** Saltmarsh Lane, the invented workshop: everything in it is made up, the formulas included. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.demonstration;
