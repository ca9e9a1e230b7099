/** Every building block of the pages on one page, to look at and to scan. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.patterns;
