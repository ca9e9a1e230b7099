package stillroom.formulary.reformulation;

import java.time.LocalDate;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.judgement.Evaluator;
import stillroom.formulary.judgement.pot.PriceBook;
import stillroom.formulary.material.MaterialBook;

/** A formula that is to be made anew, with all by which it is judged. */
public record Recast(
        Formula formula, Brief brief, MaterialBook book, PriceBook prices, Evaluator evaluator, LocalDate asOf) {}
