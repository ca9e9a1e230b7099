/** The start page: what is due. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.today;
