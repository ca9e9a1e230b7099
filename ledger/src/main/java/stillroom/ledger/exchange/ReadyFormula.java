package stillroom.ledger.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.material.MaterialBook;

/**
 * A formula of a file, led to its cards.
 *
 * @param formula with keys of the book in place of the file's names
 * @param book the file's own cards over the library's
 * @param names what each line is called, by its id
 * @param found what had to be understood with a doubt
 */
public record ReadyFormula(
        FormulaFile file, Formula formula, MaterialBook book, Map<String, String> names, List<Finding> found) {
    public ReadyFormula {
        names = Map.copyOf(names);
        found = List.copyOf(found);
    }

    /** Ready to be judged under a brief, which may ask another market than the file's. */
    public Subject subject(Brief brief) {
        Subject plain = Subjects.of(formula, brief);
        List<Finding> all = new ArrayList<>(plain.found());
        all.addAll(found);
        FormulaFile.Made made = file.made()
                .orElse(new FormulaFile.Made(java.util.Optional.empty(), stillroom.formulary.quantity.Percent.ZERO));
        return new Subject(
                brief, plain.portions(), plain.phases(), made.waterLost().massFraction(), made.ph(), all);
    }
}
