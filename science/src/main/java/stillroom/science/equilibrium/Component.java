package stillroom.science.equilibrium;

/**
 * An acid or base in a solution, whatever form it was added in.
 *
 * @param system its protonation states
 * @param molPerKg total of all its forms per kilogram of water [mol/kg]
 */
public record Component(AcidBase system, double molPerKg) {
    public Component {
        Limits.within("amount of " + system.name(), molPerKg, 0, Solution.MOST_MOL_PER_KG, "mol/kg");
    }
}
