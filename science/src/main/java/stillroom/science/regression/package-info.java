/** Fits to data with the figures that judge them. */
@org.jspecify.annotations.NullMarked
package stillroom.science.regression;
