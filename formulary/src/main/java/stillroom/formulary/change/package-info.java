/** What a change of law changes for one product. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.change;
