/** How a dissolved substance divides between water, oil and micelles. */
@org.jspecify.annotations.NullMarked
package stillroom.science.distribution;
