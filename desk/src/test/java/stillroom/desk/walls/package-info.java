/** The walls inside the desk. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.walls;
