package stillroom.desk.demonstration;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.Money;

/** A foaming hand wash, thickened with salt. Invented for the demonstration. */
final class HandWash {
    static final String NAME = "Foaming hand wash";

    private HandWash() {}

    static Brief brief() {
        return new Brief(
                ProductType.HAND_WASH,
                Set.of(Brief.People.ADULTS, Brief.People.CHILDREN_3_AND_OVER),
                "hands",
                "pours like thin honey, rinses clean, foam with small bubbles",
                Optional.of(new Interval(4.6, 5.2)),
                Optional.of(4.9),
                Optional.of(Money.of("0.60")),
                List.of("gentle on hands"),
                "PET bottle with pump, 250 ml",
                "EU");
    }

    /** The first trial: it came out thin, and the perfume was too loud. */
    static Formula first() {
        return formula("30.00", "0.60");
    }

    static Formula second() {
        return formula("36.00", "0.30");
    }

    private static Formula formula(String surfactant, String perfume) {
        return new Recipe()
                .phase("a", "Water phase")
                .toHundred("water-purified", "")
                .line("3.00", "glycerin-99", "takes the squeak off")
                .line("0.20", "sodium-gluconate", "binds metals, keeps the colour")
                .line("0.45", "sodium-benzoate", "preservative; in before any acid")
                .line("0.20", "potassium-sorbate", "preservative; in before any acid")
                .step("Weigh the water, dissolve the glycerin and the salts in it.")
                .stirring("slow")
                .minutes(10)
                .until("clear, no grains at the bottom")
                .caution("Fine powders: weigh them slowly, out of the draught.")
                .phase("b", "Surfactants")
                .line(surfactant, "sles-27", "primary surfactant")
                .line("9.00", "cocamidopropyl-betaine-30", "makes it milder and the foam denser")
                .step("Pour the surfactants in along the wall and fold them under without beating air in.")
                .stirring("slow, blade at the bottom")
                .minutes(15)
                .until("clear, no streaks")
                .caution("Surfactants irritate the eyes neat: goggles and gloves.")
                .phase("c", "Finish")
                .line(perfume, "perfume-low-allergen", "scent")
                .toReading(
                        ReadingKind.PH,
                        List.of("0.15", "0.25", "0.40"),
                        "citric-acid-50",
                        "to pH 4.9: 70 % of the expected amount first, then by the meter")
                .toReading(
                        ReadingKind.VISCOSITY,
                        List.of("0.60", "1.20", "1.80"),
                        "sodium-chloride",
                        "to the thickness wanted, in portions; past the peak it thins again")
                .step("Stir the perfume in.")
                .minutes(5)
                .until("clear again")
                .step("Add the acid drop by drop up to pH 4.9; take the pH of a sample and throw the sample away.")
                .caution("The acid solution is corrosive: goggles and gloves.")
                .step("Strew the salt in portions and wait until each has dissolved.")
                .stirring("slow")
                .until("falls off the spatula in a short ribbon")
                .step("Cover and leave to stand overnight; air rises out.")
                .until("clear, no foam on top")
                .formula();
    }
}
