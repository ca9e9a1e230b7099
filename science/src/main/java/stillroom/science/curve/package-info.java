/** Curves of the bench: viscosity against salt or thickener, and against the shear rate. */
@org.jspecify.annotations.NullMarked
package stillroom.science.curve;
