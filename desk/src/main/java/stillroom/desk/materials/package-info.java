/** The shelf: cards of raw materials, looked for, read and written. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.materials;
