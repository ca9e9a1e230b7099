package stillroom.formulary.reformulation;

import java.time.LocalDate;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.judgement.Evaluator;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.PriceBook;
import stillroom.formulary.material.MaterialBook;

/** A formula that is to be made anew, with all by which it is judged. */
public record Recast(
        Formula formula, Brief brief, MaterialBook book, PriceBook prices, Evaluator evaluator, LocalDate asOf) {
    /** A subject opened into what it is made of, by the same cards, prices and rules. */
    Pot pot(Subject subject) {
        return Pot.open(subject, book, prices, evaluator.rules(), asOf);
    }
}
