/** The whole program in one process, asked over HTTP. */
@org.jspecify.annotations.NullMarked
package stillroom.desk;
