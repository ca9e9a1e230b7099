/** The list of vessels and tools, how clean each is, and how long things may stand. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.workshop.vessels;
