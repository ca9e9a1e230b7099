/** Tests of the pH meters. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.meter;
