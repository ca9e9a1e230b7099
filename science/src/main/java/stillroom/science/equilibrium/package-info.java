/** Acid-base equilibria in water: pH, ionic strength, species and buffer capacity from the composition. */
@org.jspecify.annotations.NullMarked
package stillroom.science.equilibrium;
