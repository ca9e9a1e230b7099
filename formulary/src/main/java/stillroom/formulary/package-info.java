/** The maker's world as immutable records: pure, no clock, no file, no screen. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary;
