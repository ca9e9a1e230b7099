/** Trials of mixtures: the fit of each response, the optimum for several, and where another run is worth most. */
@org.jspecify.annotations.NullMarked
package stillroom.science.trial;
