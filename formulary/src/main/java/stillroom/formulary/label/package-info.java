/** What the container must say. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.label;
