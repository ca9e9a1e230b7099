package stillroom.desk.labels;

import stillroom.desk.shell.Desk;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.judgement.Evaluator;
import stillroom.formulary.label.Label;
import stillroom.formulary.label.LabelInput;
import stillroom.formulary.label.Labels;
import stillroom.formulary.material.MaterialBook;

/** The one way from a page to a label: today's law. */
final class LabelLaw {
    private LabelLaw() {}

    /** The rule tables are read once, when they are first asked for. */
    private static final class Tables {
        static final Labels LABELS = new Labels(Evaluator.standard().rules());
    }

    static Label label(Desk desk, Subject subject, MaterialBook book, LabelInput input) {
        return Tables.LABELS.of(subject, book, input, desk.today());
    }
}
