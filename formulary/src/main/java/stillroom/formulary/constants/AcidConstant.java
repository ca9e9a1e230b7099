package stillroom.formulary.constants;

import java.util.List;
import java.util.OptionalDouble;
import stillroom.science.equilibrium.AcidBase;
import stillroom.science.equilibrium.Dissociation;

/**
 * An acid or base of the trade as the table of constants knows it.
 *
 * @param key by which materials refer to it, such as {@code citric-acid}
 * @param name in words
 * @param cas registry number of the form that is sold as the acid or base
 * @param chargeFullyProtonated charge of the form with all its protons; of a strong one, charge of its ion [-]
 * @param steps its dissociations at 25 °C and ionic strength 0; empty for a strong acid or base
 * @param enthalpiesKnown whether every step has an enthalpy; else the temperature is followed only in part
 * @param gramsPerMol molar mass of the acid or base itself [g/mol]
 * @param freeAcidSolubilityGramsPerKg solubility of the uncharged form in water, where known and limited [g/kg]
 * @param note what else to know; empty when nothing
 * @param reference where the figures come from
 * @param read whether the pKa values were read in the reference, not given from memory
 */
public record AcidConstant(
        String key,
        String name,
        String cas,
        int chargeFullyProtonated,
        List<Dissociation> steps,
        boolean enthalpiesKnown,
        double gramsPerMol,
        OptionalDouble freeAcidSolubilityGramsPerKg,
        String note,
        String reference,
        boolean read) {

    public AcidConstant {
        steps = List.copyOf(steps);
    }

    /** Whether it is wholly dissociated, so that only its ion counts. */
    public boolean strong() {
        return steps.isEmpty();
    }

    /** Whether it gathers into micelles, where the computed pH is no more than a hint. */
    public boolean formsMicelles() {
        return note.startsWith("micelles:");
    }

    /** Protons that the form as sold has lost, so that it is uncharged: 0 for citric acid, 1 for ammonia, 1 for glycine [-]. */
    public int protonsLostWhenUncharged() {
        return chargeFullyProtonated;
    }

    /** As the equilibrium solver takes it. */
    public AcidBase system() {
        if (strong()) {
            throw new IllegalArgumentException(key + " is strong: enter its ion of charge " + chargeFullyProtonated);
        }
        return new AcidBase(key, chargeFullyProtonated, steps);
    }
}
