/** The invented workshop. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.demonstration;
