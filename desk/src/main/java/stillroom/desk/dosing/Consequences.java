package stillroom.desk.dosing;

import java.util.ArrayList;
import java.util.List;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.dosing.DosingPage.Following;
import stillroom.desk.dosing.DosingPage.Preserved;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Judgement;
import stillroom.formulary.dosing.BulkMoment;
import stillroom.formulary.dosing.InBulk;
import stillroom.formulary.dosing.PhSession;
import stillroom.formulary.evaluation.Change;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.PreservativeState;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Interval;
import stillroom.science.dosing.Dose;

/** What a dose does to the rest of the product: the same judgement before and after, at the pH of each. */
record Consequences(BatchWork work, PhSession session, DosingAsk ask, MaterialBook cards) {

    Following of(Dose dose) {
        Evaluation before = judged(session.now(), dose.now());
        BulkMoment after = session.now()
                .plus(new InBulk(ask.corrector(), java.util.Optional.empty(), new Grams(decimal(dose.grams()))));
        Evaluation then = judged(after, dose.after());
        Change change = Change.between(before, then);
        return new Following(
                Format.range(dose.after().low(), dose.after().high(), 2),
                Format.figure(dose.now().ionicStrengthMolPerKg(), 3) + " to "
                        + Format.figure(dose.after().ionicStrengthMolPerKg(), 3),
                change.appeared(),
                change.gone(),
                preserved(before.preservation(), then.preservation()),
                before.preservation().isEmpty()
                        ? "No preservative whose action hangs on the pH is in the vessel."
                        : "");
    }

    static java.math.BigDecimal decimal(double grams) {
        return java.math.BigDecimal.valueOf(grams).setScale(4, java.math.RoundingMode.HALF_EVEN);
    }

    private Evaluation judged(BulkMoment moment, Dose.State state) {
        Interval pH = new Interval(Math.max(0, state.low()), Math.min(14, state.high()));
        return Judgement.of(
                work.desk(),
                moment.subject(work.product().brief(), work.formula(), cards, java.util.Optional.of(pH)),
                cards);
    }

    private static List<Preserved> preserved(List<PreservativeState> before, List<PreservativeState> then) {
        List<Preserved> rows = new ArrayList<>();
        for (PreservativeState after : then) {
            String now = before.stream()
                    .filter(one -> one.substance().equals(after.substance()))
                    .map(one -> Format.range(one.undissociatedPercent(), 0))
                    .findFirst()
                    .orElse("");
            rows.add(new Preserved(
                    after.name(),
                    now,
                    Format.range(after.undissociatedPercent(), 0),
                    after.mayCrystallise()
                            ? "The free acid lies above its solubility: it may crystallise."
                            : after.note()));
        }
        return rows;
    }
}
