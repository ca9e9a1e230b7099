package stillroom.desk.demonstration;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.quantity.Money;

/** A balm without water. Invented for the demonstration. */
final class CalendulaBalm {
    static final String NAME = "Calendula balm";

    private CalendulaBalm() {}

    static Brief brief() {
        return new Brief(
                ProductType.BALM,
                Set.of(Brief.People.ADULTS),
                "hands and elbows",
                "melts on the skin, holds its shape on a warm shelf",
                Optional.empty(),
                Optional.empty(),
                Optional.of(Money.of("4.00")),
                List.of("without water"),
                "tin, 30 g",
                "EU");
    }

    static Formula formula() {
        return new Recipe()
                .phase("a", "Waxes and oils")
                .toHundred("sunflower-oil", "")
                .line("16.00", "beeswax-white", "gives it its shape")
                .line("10.00", "jojoba-oil", "emollient that keeps well")
                .step("Melt the wax in the oils in the water bath.")
                .at(72)
                .minutes(20)
                .until("clear melt, no wax left")
                .caution("Hot oil burns; never leave it alone on the heat, never over an open flame.")
                .phase("b", "Butter and extract")
                .line("30.00", "calendula-oil-extract", "soothing")
                .line("18.00", "shea-butter", "emollient")
                .line("0.30", "tocopherol", "keeps the oils from going rancid")
                .step("Take off the heat and stir butter, extract and tocopherol in.")
                .at(62)
                .minutes(10)
                .until("clear, no butter left")
                .step("Pour into dry tins and cool fast, lids off, so that the butter does not turn grainy.")
                .until("set, smooth, no dip in the middle")
                .caution("Wet tins grow mould: dry them in the oven and let them cool.")
                .formula();
    }
}
