package stillroom.science.equilibrium;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is dissolved, per kilogram of water.
 *
 * @param components weak acids and bases; zero amounts are allowed
 * @param ions strong ions; they need not balance, water supplies hydrogen or hydroxide ions
 * @param celsius temperature; outside 5 to 60 the answer is marked [°C]
 * @param air a gas in exchange with the solution; empty for a closed vessel
 */
public record Solution(List<Component> components, List<StrongIon> ions, double celsius, Optional<DissolvedGas> air) {

    /** More than dissolves of anything; larger numbers are slips of the pen. */
    static final double MOST_MOL_PER_KG = 100;

    public Solution {
        components = List.copyOf(components);
        ions = List.copyOf(ions);
        Limits.within("celsius", celsius, -5, 100, "°C");
    }

    /** Pure water in a closed vessel. */
    public static Solution water(double celsius) {
        return new Solution(List.of(), List.of(), celsius, Optional.empty());
    }

    /** The same with one more weak acid or base. */
    public Solution with(AcidBase system, double molPerKg) {
        List<Component> more = new ArrayList<>(components);
        more.add(new Component(system, molPerKg));
        return new Solution(more, ions, celsius, air);
    }

    /** The same with one more strong ion. */
    public Solution withIon(String name, int charge, double molPerKg) {
        List<StrongIon> more = new ArrayList<>(ions);
        more.add(new StrongIon(name, charge, molPerKg));
        return new Solution(components, more, celsius, air);
    }

    /** The same, standing open under a gas. */
    public Solution openTo(DissolvedGas gas) {
        return new Solution(components, ions, celsius, Optional.of(gas));
    }
}
