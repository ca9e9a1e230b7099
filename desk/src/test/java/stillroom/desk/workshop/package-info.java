/** The workshop's own page. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.workshop;
