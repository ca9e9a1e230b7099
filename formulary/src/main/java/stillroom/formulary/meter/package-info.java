/** The workshop's pH meters: their calibrations, and what a reading taken with them is worth. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.meter;
