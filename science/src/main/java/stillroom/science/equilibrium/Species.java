package stillroom.science.equilibrium;

/**
 * One form of a dissolved substance in equilibrium.
 *
 * @param name of the acid, base or ion it belongs to
 * @param protonsLost counted from the fully protonated form [-]
 * @param charge charge number [-]
 * @param molPerKg amount per kilogram of water [mol/kg]
 * @param activityCoefficient on the molality scale [-]
 */
public record Species(String name, int protonsLost, int charge, double molPerKg, double activityCoefficient) {}
