/** The start page, asked over HTTP. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.today;
