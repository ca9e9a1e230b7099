package stillroom.formulary.material;

import java.util.Optional;

/**
 * The acid, base or alcohol as which a law counts a salt or an ester, and the ion that a salt brings with it.
 *
 * <p>Mass of parent in 1 g of the substance = units × M(parent) ÷ M(substance).
 *
 * @param substance key of the parent substance, such as {@code benzoic-acid} for sodium benzoate
 * @param units moles of parent in one mole of the substance [mol/mol]
 * @param counterIon empty for an ester or a hydrate
 * @param counterIonUnits moles of that ion in one mole of the substance, 0 without an ion [mol/mol]
 */
public record Parent(String substance, double units, Optional<CounterIon> counterIon, double counterIonUnits) {
    public Parent {
        if (!(units > 0) || !(counterIonUnits >= 0) || counterIon.isPresent() != counterIonUnits > 0) {
            throw new IllegalArgumentException("parent " + substance + ": units " + units + ", counter-ion "
                    + counterIon + " × " + counterIonUnits + "; units must be above 0, an ion needs its units");
        }
    }

    public static Parent ester(String substance, double units) {
        return new Parent(substance, units, Optional.empty(), 0);
    }

    public static Parent salt(String substance, double units, CounterIon ion, double ionUnits) {
        return new Parent(substance, units, Optional.of(ion), ionUnits);
    }
}
