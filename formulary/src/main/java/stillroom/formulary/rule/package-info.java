/** Law and craft as dated data: what a table row says, on which conditions, since when, and where it was read. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.rule;
