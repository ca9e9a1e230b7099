package stillroom.science.equilibrium;

/**
 * An ion that takes no part in any equilibrium, such as sodium or chloride.
 *
 * <p>Sodium alone stands for sodium hydroxide, chloride alone for hydrochloric acid: water makes up the charge.
 *
 * @param name how the answer calls it
 * @param charge charge number [-]
 * @param molPerKg amount per kilogram of water [mol/kg]
 */
public record StrongIon(String name, int charge, double molPerKg) {
    public StrongIon {
        Limits.within("charge of " + name, charge, -8, 8, "");
        Limits.within("amount of " + name, molPerKg, 0, Solution.MOST_MOL_PER_KG, "mol/kg");
    }
}
