package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.formulary.batch.AsMade;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.batch.MadeLine;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.trial.TrialSet;
import stillroom.ledger.batch.BatchRow;
import stillroom.science.trial.TrialRun;

/**
 * A run with what was really weighed of it.
 *
 * @param batch the newest batch in which every component was poured, or else its newest, if there is one
 * @param fractions as weighed, where every component was poured; planned otherwise
 * @param asWeighed whether the fractions are those of the balance
 */
record Weighed(TrialSet.Run run, Optional<BatchRow> batch, List<Double> fractions, boolean asWeighed) {

    static List<Weighed> of(Desk desk, TrialSet set) {
        return set.runs().stream().map(run -> of(desk, set, run)).toList();
    }

    private static Weighed of(Desk desk, TrialSet set, TrialSet.Run run) {
        List<BatchRow> batches = desk.ledger().batches().fromVersion(set.product(), run.version());
        for (BatchRow batch : batches) {
            Optional<List<Double>> made = fractions(desk, set, run, batch);
            if (made.isPresent()) {
                return new Weighed(run, Optional.of(batch), made.get(), true);
            }
        }
        return new Weighed(run, batches.stream().findFirst(), run.fractions(), false);
    }

    private static Optional<List<Double>> fractions(Desk desk, TrialSet set, TrialSet.Run run, BatchRow row) {
        FormulaVersion version =
                desk.ledger().products().version(set.product(), run.version()).orElseThrow();
        AsMade made = AsMade.of(
                BatchState.of(desk.ledger().batches().log(row.batch().id())),
                version.formula(),
                desk.ledger().materials().book(version.cards()));
        List<Double> grams = new ArrayList<>();
        for (int i = 0; i < set.components().size(); i++) {
            double actual = made.line(set.components().get(i).lineId())
                    .map(MadeLine::actual)
                    .map(mass -> mass.value().doubleValue())
                    .orElse(0.0);
            if (actual <= 0 && run.fractions().get(i) > 0) {
                return Optional.empty();
            }
            grams.add(actual);
        }
        double sum = grams.stream().mapToDouble(Double::doubleValue).sum();
        return sum <= 0
                ? Optional.empty()
                : Optional.of(grams.stream().map(one -> one / sum).toList());
    }

    /** For the fit of one response. */
    TrialRun trial(TrialSet set, String response) {
        List<Double> coded = new ArrayList<>();
        for (int k = 0; k < set.variables().size(); k++) {
            coded.add(Region.coded(set.variables().get(k), run.settings().get(k)));
        }
        return new TrialRun(fractions, coded, Optional.ofNullable(run.measured().get(response)), run.block());
    }
}
