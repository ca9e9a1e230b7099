package stillroom.science.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillroom.science.mixture.Blending;
import stillroom.science.mixture.MixtureModel;
import stillroom.science.mixture.MixtureRegion;
import stillroom.science.mixture.ProcessTerms;
import stillroom.science.regression.LinearFit;
import stillroom.science.regression.StoredFits;

/** Every figure of a fit against R's lm; engines/fit/README.md says how it was run. Data of the gasoline: myers-2009-gasoline. */
class FitsByRTest {
    private static final double DIGITS = 2e-9;

    @Test
    void gasoline() throws IOException {
        List<TrialRun> runs = runs("gasoline.csv", 0);
        agree("gasoline.quadratic", fitted(MixtureModel.of(3, Blending.QUADRATIC), runs, Fitting.Selection.NONE));
        agree("gasoline.cubic", fitted(MixtureModel.of(3, Blending.SPECIAL_CUBIC), runs, Fitting.Selection.NONE));
    }

    @Test
    void processVariablesLinearSquaredAndCrossed() throws IOException {
        List<TrialRun> runs = runs("process.csv", 1);
        for (ProcessTerms how : ProcessTerms.values()) {
            MixtureModel model = MixtureModel.of(3, Blending.QUADRATIC, 1, how);
            agree(
                    "process." + how.name().toLowerCase(java.util.Locale.ROOT),
                    fitted(model, runs, Fitting.Selection.NONE));
        }
    }

    @Test
    void backwardSelectionKeepsTheSameTerms() throws IOException {
        kept("gasoline.cubic", MixtureModel.of(3, Blending.SPECIAL_CUBIC), runs("gasoline.csv", 0));
        kept("gasoline.quadratic", MixtureModel.of(3, Blending.QUADRATIC), runs("gasoline.csv", 0));
        kept(
                "process.crossed",
                MixtureModel.of(3, Blending.QUADRATIC, 1, ProcessTerms.CROSSED),
                runs("process.csv", 1));
    }

    private static void kept(String name, MixtureModel model, List<TrialRun> runs) throws IOException {
        List<Integer> kept = fitted(model, runs, Fitting.Selection.BACKWARD).terms().stream()
                .map(term -> model.terms().indexOf(term) + 1)
                .toList();
        assertThat(kept)
                .isEqualTo(StoredFits.figures(name + ".kept").stream()
                        .map(Double::intValue)
                        .toList());
    }

    /** The special cubic of seven polymer blends as printed; as many terms as runs. Source: bruns-2006-polymers. */
    @Test
    void polymersHaveThePrintedCoefficients() {
        double t = 1 / 3.0;
        double h = 0.5;
        List<TrialRun> runs = Published.runs(
                new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {h, h, 0}, {h, 0, h}, {0, h, h}, {t, t, t}},
                new double[][] {{51.2}, {20.0}, {20.2}, {44.8}, {23.5}, {35.7}, {45.4}});
        MixtureFit fit = Published.fit(runs, Blending.SPECIAL_CUBIC, Fitting.Selection.NONE);
        double[] printed = {51.2, 20.0, 20.2, 36.8, -48.8, 62.4, 252.0};
        for (int k = 0; k < printed.length; k++) {
            assertThat(fit.fit().coefficients().get(k).estimate()).isCloseTo(printed[k], within(1e-10));
        }
        assertThat(fit.said()).anyMatch(sentence -> sentence.contains("As many terms as runs"));
    }

    private static void agree(String name, MixtureFit mixture) throws IOException {
        LinearFit fit = mixture.fit();
        List<LinearFit.Coefficient> terms = fit.coefficients();
        agree(
                name + ".estimates",
                terms.stream().map(LinearFit.Coefficient::estimate).toList());
        agree(
                name + ".errors",
                terms.stream().map(LinearFit.Coefficient::standardError).toList());
        agree(name + ".p", terms.stream().map(LinearFit.Coefficient::p).toList());
        agree(name + ".leverages", fit.leverages());
        agree(name + ".studentised", fit.studentisedResiduals());
        agree(name + ".press", List.of(fit.press()));
        agree(name + ".predicted", List.of(fit.predictedRSquared()));
        agree(name + ".sse.r2.s", List.of(fit.errorSquares(), fit.rSquared(), fit.residualDeviation()));
        LinearFit.Variance lack = fit.lackOfFit();
        agree(
                name + ".lack",
                List.of(
                        lack.squares(),
                        (double) lack.degreesOfFreedom(),
                        lack.f(),
                        lack.p(),
                        fit.pure().squares(),
                        (double) fit.pure().degreesOfFreedom()));
        agree(name + ".aicc", List.of(fit.correctedAkaike()));
    }

    private static void agree(String name, List<Double> ours) throws IOException {
        List<Double> theirs = StoredFits.figures(name);
        assertThat(ours).describedAs(name).hasSameSizeAs(theirs);
        for (int k = 0; k < theirs.size(); k++) {
            assertThat(ours.get(k))
                    .describedAs(name + " " + (k + 1))
                    .isCloseTo(theirs.get(k), within(DIGITS * Math.max(0.01, Math.abs(theirs.get(k)))));
        }
    }

    private static MixtureFit fitted(MixtureModel model, List<TrialRun> runs, Fitting.Selection selection) {
        return Fitting.fit(MixtureRegion.simplex(3), model, runs, selection).match(FitAnswer.Fitted::fit, no -> {
            throw new AssertionError(no.reasons());
        });
    }

    private static List<TrialRun> runs(String file, int processes) throws IOException {
        List<TrialRun> runs = new ArrayList<>();
        for (List<Double> row : StoredFits.rows(file)) {
            runs.add(new TrialRun(
                    row.subList(0, 3), row.subList(3, 3 + processes), Optional.of(row.get(3 + processes)), 1));
        }
        return runs;
    }
}
