package stillroom.science.dosing;

import java.util.List;
import stillroom.science.equilibrium.Component;
import stillroom.science.equilibrium.EquilibriumSolver;
import stillroom.science.equilibrium.Solution;
import stillroom.science.equilibrium.StrongIon;
import stillroom.science.equilibrium.WaterModel;

/**
 * An acid or base as it is poured, with its real strength and its own water.
 *
 * @param name how the maker calls it
 * @param components weak acids and bases, per kilogram of corrector [mol/kg]
 * @param ions strong ions, per kilogram of corrector; sodium alone stands for sodium hydroxide [mol/kg]
 * @param waterMassFraction its own water [-]
 */
public record Corrector(String name, List<Component> components, List<StrongIon> ions, double waterMassFraction) {

    public Corrector {
        components = List.copyOf(components);
        ions = List.copyOf(ions);
        if (!(waterMassFraction >= 0 && waterMassFraction <= 1)) {
            throw new IllegalArgumentException(
                    "waterMassFraction of " + name + " is " + waterMassFraction + ", allowed are 0 to 1");
        }
    }

    /** The corrector weighed into water, so that it makes up a mass fraction of the whole. */
    public Corrector dilutedTo(double massFraction) {
        if (!(massFraction > 0 && massFraction <= 1)) {
            throw new IllegalArgumentException("massFraction is " + massFraction + ", allowed are above 0 to 1");
        }
        return new Corrector(
                name + " diluted to " + Math.round(1e4 * massFraction) / 1e2 + " %",
                components.stream()
                        .map(c -> new Component(c.system(), c.molPerKg() * massFraction))
                        .toList(),
                ions.stream()
                        .map(i -> new StrongIon(i.name(), i.charge(), i.molPerKg() * massFraction))
                        .toList(),
                1 - massFraction * (1 - waterMassFraction));
    }

    /** Whether there is anything in it that can move a pH. */
    public boolean hasStrength() {
        return components.stream().anyMatch(c -> c.molPerKg() > 0)
                || ions.stream().anyMatch(i -> i.molPerKg() > 0 && i.charge() != 0);
    }

    /** Whether a little of it makes pure water sour. */
    public boolean lowersPh() {
        List<Component> few = components.stream()
                .map(c -> new Component(c.system(), c.molPerKg() / 100))
                .toList();
        List<StrongIon> fewIons = ions.stream()
                .map(i -> new StrongIon(i.name(), i.charge(), i.molPerKg() / 100))
                .toList();
        Solution solution = new Solution(few, fewIons, 25, java.util.Optional.empty());
        return new EquilibriumSolver(WaterModel.STANDARD).solve(solution).pH() < 7;
    }
}
