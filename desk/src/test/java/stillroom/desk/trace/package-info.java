/** Checks of the trace and of what becomes of units. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.trace;
