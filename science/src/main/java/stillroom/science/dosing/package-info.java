/**
 * Correcting a pH: learn the buffering from a titrated sample, dose the bulk in stages.
 *
 * <p>Every mixture is modelled by {@link stillroom.science.equilibrium.EquilibriumSolver}: what is known of the liquid,
 * plus effective one-proton acids 0.75 pH apart whose amounts are fitted, plus one strong ion of unknown charge. The
 * logarithms of the amounts are held together by a smoothness term, so that few readings give a plain buffer capacity
 * and many give its shape. Intervals come from the curvature of the fit at its best point.
 */
@org.jspecify.annotations.NullMarked
package stillroom.science.dosing;
