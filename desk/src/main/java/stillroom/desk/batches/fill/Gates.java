package stillroom.desk.batches.fill;

import java.util.List;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.labels.LabelView;
import stillroom.formulary.batch.AsMade;
import stillroom.formulary.batch.ReleaseGate;

/** What stands before the release of a batch, the label of what was really made included. */
final class Gates {
    private Gates() {}

    static List<ReleaseGate> of(BatchWork work) {
        AsMade made = AsMade.of(work.state(), work.formula(), work.book());
        return ReleaseGate.of(
                work.state(), made, work.formula(), work.product().brief(), labelOpen(work, made), work.holds());
    }

    private static List<String> labelOpen(BatchWork work, AsMade made) {
        if (work.version().isEmpty()) {
            return List.of("weighed free hand, so no version has a label to compare with");
        }
        if (made.added().signum() <= 0) {
            return List.of("nothing was weighed in");
        }
        return work.version()
                .map(version -> new LabelView(work.desk(), work.product(), version)
                        .open(work.state(), work.batch().code()))
                .orElse(List.of());
    }
}
