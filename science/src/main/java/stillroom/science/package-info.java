/** Numbers in, numbers out: no clocks, files, databases or screens, and none of the maker's words. */
@org.jspecify.annotations.NullMarked
package stillroom.science;
