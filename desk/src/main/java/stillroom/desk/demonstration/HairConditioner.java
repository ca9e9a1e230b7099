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

/** A cationic hair conditioner to be rinsed off. Invented for the demonstration. */
final class HairConditioner {
    static final String NAME = "Hair conditioner";

    private HairConditioner() {}

    static Brief brief() {
        return new Brief(
                ProductType.HAIR_CONDITIONER,
                Set.of(Brief.People.ADULTS),
                "hair lengths",
                "slips under the comb, rinses out",
                Optional.of(new Interval(4.0, 4.8)),
                Optional.of(4.4),
                Optional.of(Money.of("1.20")),
                List.of("easy to comb"),
                "bottle with disc top, 200 ml",
                "EU");
    }

    static Formula formula() {
        return new Recipe()
                .phase("a", "Water phase")
                .toHundred("water-purified", "")
                .line("2.00", "glycerin-99", "humectant; wets the cellulose")
                .line("0.40", "hydroxyethylcellulose", "thickener that gets on with cationics")
                .line("0.20", "sodium-citrate", "buffer, binds metals")
                .step("Wet the cellulose with the glycerin, stir it into the cold water and let it swell.")
                .stirring("brisk")
                .minutes(40)
                .until("clear and slightly thick")
                .step("Add the citrate and heat, covered.")
                .at(75)
                .minutes(15)
                .caution("Hot water: hold the beaker with a cloth.")
                .phase("b", "Oil phase")
                .line("5.00", "behentrimonium-methosulfate-25", "cationic conditioner and emulsifier")
                .line("4.00", "cetyl-alcohol", "body")
                .line("1.50", "coco-caprylate", "slip")
                .step("Melt everything together in the water bath.")
                .at(75)
                .minutes(20)
                .until("clear melt, no flakes")
                .caution("Cationics irritate the eyes: goggles and gloves.")
                .step(
                        "Pour the oil phase into the water phase when both are within 5 °C of each other; stir, no anionic soap on the tools.")
                .stirring("brisk, no high shear")
                .minutes(10)
                .until("white and even")
                .phase("c", "Cool-down")
                .line("1.00", "betaine-anhydrous", "humectant")
                .line("0.90", "benzyl-alcohol-dehydroacetic-acid", "preservative; works below pH 6")
                .line("0.30", "perfume-low-allergen", "scent")
                .toReading(ReadingKind.PH, List.of("0.10", "0.30", "0.55"), "citric-acid-50", "to pH 4.4")
                .step("Stir until it has cooled, then add betaine, preservative and perfume one after the other.")
                .at(38)
                .stirring("slow")
                .minutes(30)
                .until("smooth, thick, no grains")
                .caution("The preservative is handled neat: goggles and gloves.")
                .step("Bring to pH 4.4 with the acid; read the pH of 10 % in water beside the neat one.")
                .caution("The acid solution is corrosive: goggles and gloves.")
                .formula();
    }
}
