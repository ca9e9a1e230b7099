/** Constants of acids and bases with their references, read from a data file of this jar. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.constants;
