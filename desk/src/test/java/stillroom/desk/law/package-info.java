/** Law pages, and how long every stored formula takes on another day. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.law;
