/** Weighing arithmetic: rounding to a step with an exact sum, minimum weights, uncertainty of a share. */
@org.jspecify.annotations.NullMarked
package stillroom.science.weighing;
