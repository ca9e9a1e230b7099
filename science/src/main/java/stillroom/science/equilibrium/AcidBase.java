package stillroom.science.equilibrium;

import java.util.List;

/**
 * An acid or base with all its protonation states, from the fully protonated form down.
 *
 * <p>Citric acid has charge 0 and three steps; ammonia is entered as ammonium, charge +1 and one step; glycine has
 * charge +1 and two steps, so that its uncharged form is the zwitterion. Constants are macroscopic.
 *
 * @param name how the answer calls it
 * @param chargeFullyProtonated charge number of the form that has all its protons [-]
 * @param steps the dissociations in the order in which the protons leave
 */
public record AcidBase(String name, int chargeFullyProtonated, List<Dissociation> steps) {

    /** More protons than any substance of the trade has (phytic acid: 12). */
    static final int MOST_STEPS = 16;

    public AcidBase {
        steps = List.copyOf(steps);
        Limits.within("number of dissociations of " + name, steps.size(), 1, MOST_STEPS, "");
        Limits.within("charge of " + name, chargeFullyProtonated, -MOST_STEPS, MOST_STEPS, "");
        Limits.within("charge of the bare form of " + name, chargeFullyProtonated - steps.size(), -MOST_STEPS, 16, "");
    }

    /** An acid or base whose enthalpies are not known. */
    public static AcidBase of(String name, int chargeFullyProtonated, double... pKas) {
        return new AcidBase(
                name,
                chargeFullyProtonated,
                java.util.Arrays.stream(pKas).mapToObj(Dissociation::of).toList());
    }

    /** Charge number of the form that has lost all its protons [-]. */
    public int chargeBare() {
        return chargeFullyProtonated - steps.size();
    }

    /** Largest absolute charge number among the forms [-]. */
    public int largestCharge() {
        return Math.max(Math.abs(chargeFullyProtonated), Math.abs(chargeBare()));
    }
}
