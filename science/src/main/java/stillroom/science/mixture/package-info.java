/** Mixtures: the region of the allowed ones, its corners, edges and faces, and the Scheffé models fitted on it. */
@org.jspecify.annotations.NullMarked
package stillroom.science.mixture;
