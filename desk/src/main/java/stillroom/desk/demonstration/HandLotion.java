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

/** An oil-in-water hand lotion. Invented for the demonstration. */
final class HandLotion {
    static final String NAME = "Hand lotion";

    private HandLotion() {}

    static Brief brief() {
        return new Brief(
                ProductType.HAND_CREAM,
                Set.of(Brief.People.ADULTS),
                "hands",
                "sinks in within a minute, leaves no shine",
                Optional.of(new Interval(5.0, 5.8)),
                Optional.of(5.4),
                Optional.of(Money.of("1.50")),
                List.of("for dry hands"),
                "tube, 75 ml",
                "EU");
    }

    static Formula formula() {
        return new Recipe()
                .phase("a", "Water phase")
                .toHundred("water-purified", "")
                .line("4.00", "glycerin-99", "humectant; wets the gum")
                .line("0.25", "xanthan-gum", "holds the droplets apart")
                .line("0.30", "sodium-citrate", "buffer, binds metals")
                .line("0.20", "allantoin", "soothing")
                .step("Stir the gum into the glycerin to a smooth slurry, then into the water.")
                .stirring("fast")
                .minutes(20)
                .until("no fish eyes when held against the light")
                .step("Add citrate and allantoin and heat, covered.")
                .at(75)
                .minutes(20)
                .until("all dissolved")
                .caution("Hot water: hold the beaker with a cloth.")
                .phase("b", "Oil phase")
                .line("8.00", "sunflower-oil", "emollient")
                .line("4.00", "coco-caprylate", "light emollient, spreads")
                .line("3.00", "shea-butter", "emollient, gives body")
                .line("3.00", "glyceryl-stearate-peg-100", "oil-in-water emulsifier")
                .line("1.50", "glyceryl-stearate", "co-emulsifier: brings the pair near what the oils ask")
                .line("1.50", "cetearyl-alcohol", "thickens the water between the droplets")
                .step("Melt everything together in the water bath.")
                .at(75)
                .minutes(20)
                .until("clear melt, no flakes")
                .caution("Hot oil burns: no splash water near it.")
                .step("Pour the oil phase into the water phase when both are within 5 °C of each other; homogenise.")
                .stirring("high shear")
                .minutes(3)
                .until("white, even, no oil eyes")
                .phase("c", "Cool-down")
                .line("1.00", "phenoxyethanol-ethylhexylglycerin", "preservative")
                .line("0.20", "tocopherol", "keeps the oils from going rancid; no preservative")
                .line("0.20", "perfume-low-allergen", "scent")
                .toReading(ReadingKind.PH, List.of("0.08", "0.15", "0.30"), "citric-acid-50", "to pH 5.4")
                .step("Stir until it has cooled, then add preservative, tocopherol and perfume one after the other.")
                .at(38)
                .stirring("slow, scraping the wall")
                .minutes(30)
                .until("smooth, no lumps")
                .caution("The preservative is handled neat: goggles and gloves.")
                .step("Bring to pH 5.4 with the acid, drop by drop.")
                .caution("The acid solution is corrosive: goggles and gloves.")
                .formula();
    }
}
