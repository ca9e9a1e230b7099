package stillroom.formulary.reformulation;

import java.util.List;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;

/** An invented balm without water, each card of which has an index of natural origin; the rest as with the lotion. */
final class Balm {
    private Balm() {}

    static Recast recast() {
        List<Line> lines = List.of(
                new Line("s", "sunflower-oil", new Amount.ToHundred(), ""),
                new Line("m", "mineral-oil", Amount.fixed("18"), ""),
                new Line("o", "octyldodecanol", Amount.fixed("10"), ""),
                new Line("b", "beeswax-white", Amount.fixed("16"), ""),
                new Line("h", "shea-butter", Amount.fixed("12"), ""));
        Recast lotion = Lotion.recast();
        return new Recast(
                new Formula(List.of(new Phase("a", "Melt", lines, List.of()))),
                lotion.brief(),
                lotion.book(),
                lotion.prices(),
                lotion.evaluator(),
                lotion.asOf());
    }
}
