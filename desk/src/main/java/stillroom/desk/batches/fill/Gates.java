package stillroom.desk.batches.fill;

import java.util.ArrayList;
import java.util.List;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.labels.LabelView;
import stillroom.desk.shell.Judgement;
import stillroom.formulary.batch.AsMade;
import stillroom.formulary.batch.ReleaseGate;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.label.Label;
import stillroom.formulary.label.LabelDifference;
import stillroom.formulary.label.LabelInput;
import stillroom.formulary.material.MaterialBook;

/** What stands before the release of a batch, the label of what was really made included. */
final class Gates {
    private Gates() {}

    static List<ReleaseGate> of(BatchWork work) {
        AsMade made = AsMade.of(work.state(), work.formula(), work.book());
        return ReleaseGate.of(work.state(), made, work.formula(), work.product().brief(), labelOpen(work, made));
    }

    private static List<String> labelOpen(BatchWork work, AsMade made) {
        if (work.version().isEmpty()) {
            return List.of("weighed free hand, so no version has a label to compare with");
        }
        if (made.added().signum() <= 0) {
            return List.of("nothing was weighed in");
        }
        LabelDifference difference = LabelDifference.between(planned(work), made(work, made));
        List<String> said = new ArrayList<>();
        add(said, "it lacks ", lacking(work));
        add(said, "it lacks ", difference.missing());
        add(said, "it names too much: ", difference.surplus());
        add(said, "order: ", difference.order());
        add(said, "it lacks the warning ", difference.warnings());
        return said;
    }

    private static List<String> lacking(BatchWork work) {
        return work.version()
                .map(version -> new LabelView(work.desk(), work.product(), version)
                        .input(work.batch().code())
                        .missing())
                .orElse(List.of());
    }

    private static void add(List<String> said, String what, List<String> names) {
        if (!names.isEmpty()) {
            said.add(what + String.join(", ", names));
        }
    }

    private static Label planned(BatchWork work) {
        return label(work, Subjects.of(work.formula(), work.product().brief()), work.book());
    }

    private static Label made(BatchWork work, AsMade made) {
        return label(
                work,
                made.subject(work.product().brief(), work.formula(), work.state()),
                work.madeBook().book());
    }

    private static Label label(BatchWork work, Subject subject, MaterialBook book) {
        return Judgement.label(
                work.desk(), subject, book, LabelInput.named(work.product().name()));
    }
}
