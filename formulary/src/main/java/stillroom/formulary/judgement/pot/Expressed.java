package stillroom.formulary.judgement.pot;

import java.util.Optional;
import stillroom.formulary.material.CounterIon;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Parent;
import stillroom.formulary.material.Substance;

/**
 * A substance expressed as another one by molar mass: a salt as its acid or base, an ester as its alcohol, a salt as the
 * ion that it brings.
 *
 * <p>Mass of the other in 1 g = moles of it per mole · M(other) ÷ M(substance). Source of the masses: the substance
 * table; of the ions, IUPAC 2021 abridged atomic weights.
 */
public final class Expressed {
    /** Chains such as salt, hydrate, acid are short; a longer one is a fault of the table. */
    private static final int LONGEST_CHAIN = 4;

    private Expressed() {}

    /** Mass of the other in 1 g; empty where a molar mass is missing or no chain of parents leads to it. */
    public static Optional<Double> as(Substance substance, String other, MaterialBook book) {
        if (substance.key().equals(other)) {
            return Optional.of(1.0);
        }
        Optional<Double> own = substance.molarMassGramsPerMol();
        Optional<Double> wanted = book.substance(other).flatMap(Substance::molarMassGramsPerMol);
        Optional<Double> units = units(substance, other, book, LONGEST_CHAIN);
        return own.isPresent() && wanted.isPresent() && units.isPresent()
                ? Optional.of(units.get() * wanted.get() / own.get())
                : Optional.empty();
    }

    /** Moles of the other in one mole; empty where no chain of parents leads to it. */
    public static Optional<Double> moles(Substance substance, String other, MaterialBook book) {
        return units(substance, other, book, LONGEST_CHAIN);
    }

    /** Mass of the counter-ion in 1 g; empty where it brings none or has no molar mass. */
    public static Optional<Double> asIon(Substance substance) {
        return substance
                .parent()
                .filter(parent -> parent.counterIon().isPresent())
                .flatMap(parent -> substance
                        .molarMassGramsPerMol()
                        .map(own -> parent.counterIonUnits()
                                * gramsPerMol(parent.counterIon().orElseThrow())
                                / own));
    }

    private static Optional<Double> units(Substance substance, String other, MaterialBook book, int further) {
        if (substance.key().equals(other)) {
            return Optional.of(1.0);
        }
        if (further == 0 || substance.parent().isEmpty()) {
            return Optional.empty();
        }
        Parent parent = substance.parent().get();
        if (parent.substance().equals(other)) {
            return Optional.of(parent.units());
        }
        return book.substance(parent.substance())
                .flatMap(next -> units(next, other, book, further - 1))
                .map(more -> parent.units() * more);
    }

    /** Molar mass of an ion [g/mol]. */
    private static double gramsPerMol(CounterIon ion) {
        return switch (ion) {
            case SODIUM -> 22.990;
            case POTASSIUM -> 39.098;
            case LITHIUM -> 6.94;
            case AMMONIUM -> 18.039;
            case MAGNESIUM -> 24.305;
            case CALCIUM -> 40.078;
            case ZINC -> 65.38;
            case CHLORIDE -> 35.45;
            case BROMIDE -> 79.904;
            case METHOSULFATE -> 111.10;
            case SULFATE -> 96.06;
        };
    }
}
