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

/** A mild toner on lactic acid and its sodium salt, worked cold. Invented for the demonstration. */
final class LacticToner {
    static final String NAME = "Lactic acid toner";

    private LacticToner() {}

    static Brief brief() {
        return new Brief(
                ProductType.TONER,
                Set.of(Brief.People.ADULTS),
                "face, not near the eyes",
                "like water, not sticky once dry",
                Optional.of(new Interval(5.0, 5.4)),
                Optional.of(5.2),
                Optional.of(Money.of("1.20")),
                List.of("with lactic acid"),
                "bottle with spray-free disc top, 100 ml",
                "EU");
    }

    static Formula formula() {
        return new Recipe()
                .phase("a", "Water phase")
                .toHundred("water-purified", "")
                .line("3.00", "propanediol", "humectant, solvent")
                .line("2.00", "glycerin-99", "humectant")
                .line("2.40", "sodium-lactate-60", "humectant and the other half of the buffer")
                .line("1.00", "betaine-anhydrous", "humectant, takes the sting off the acid")
                .line("0.20", "allantoin", "soothing")
                .line("0.10", "sodium-gluconate", "binds metals")
                .step("Dissolve all in the water, allantoin last.")
                .stirring("slow")
                .minutes(30)
                .until("clear, no crystals")
                .phase("b", "Preservative")
                .line("2.00", "pentylene-glycol", "carries the preservative into the water")
                .line("0.80", "phenoxyethanol-ethylhexylglycerin", "preservative")
                .step("Mix the two in a small beaker and pour them into the water phase in a thin stream.")
                .minutes(10)
                .until("clear, no oily drops on the surface")
                .caution("The preservative is handled neat: goggles and gloves.")
                .phase("c", "To pH")
                .toReading(
                        ReadingKind.PH,
                        List.of("0.02", "0.06", "0.15"),
                        "lactic-acid-80",
                        "to pH 5.2; look again the next day, the acid opens slowly")
                .step("Bring to pH 5.2 with the lactic acid, drop by drop.")
                .caution("Strong acid: goggles and gloves; the acid into the water, never the other way round.")
                .step("Leave to stand a day and take the pH again.")
                .until("clear, pH within the band")
                .formula();
    }
}
