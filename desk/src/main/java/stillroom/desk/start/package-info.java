/** Launch: arguments, the server, and what a maker sees when it does not start. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.start;
