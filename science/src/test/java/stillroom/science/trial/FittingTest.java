package stillroom.science.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import stillroom.science.mixture.Blending;
import stillroom.science.mixture.MixtureModel;
import stillroom.science.mixture.MixtureRegion;

class FittingTest {
    private static final MixtureRegion THREE = MixtureRegion.simplex(3);

    private static FitAnswer answer(List<TrialRun> runs, Blending blending) {
        return Fitting.fit(THREE, MixtureModel.of(3, blending), runs, Fitting.Selection.NONE);
    }

    private static List<String> reasons(FitAnswer answer) {
        return answer.match(fitted -> List.of(), FitAnswer.NotYet::reasons);
    }

    @Test
    void equalResponsesAreSaid() {
        List<TrialRun> flat = Published.yarn().stream()
                .map(run -> new TrialRun(run.fractions(), List.of(), Optional.of(7.0), 1))
                .toList();
        assertThat(reasons(answer(flat, Blending.QUADRATIC))).anyMatch(sentence -> sentence.contains("same"));
    }

    @Test
    void aMissingResponseIsLeftOutAndSaid() {
        List<TrialRun> runs = new ArrayList<>(Published.yarn());
        runs.set(2, new TrialRun(runs.get(2).fractions(), List.of(), Optional.empty(), 1));
        MixtureFit fit = Published.fit(runs, Blending.QUADRATIC, Fitting.Selection.NONE);
        assertThat(fit.fit().observations()).isEqualTo(14);
        assertThat(fit.said()).anyMatch(sentence -> sentence.contains("run 3"));
    }

    @Test
    void tooFewAreSaidWithHowManyAreMissing() {
        assertThat(reasons(answer(Published.yarn().subList(0, 4), Blending.QUADRATIC)))
                .anyMatch(sentence -> sentence.contains("4 measured runs") && sentence.contains("2 more"));
    }

    @Test
    void settingsThatDoNotTellTheTermsApartAreSaid() {
        List<TrialRun> runs = new ArrayList<>(Published.yarn().subList(0, 8));
        assertThat(reasons(answer(runs, Blending.QUADRATIC))).anyMatch(sentence -> sentence.contains("apart"));
    }

    @Test
    void anOutlierIsNamedAndKept() {
        List<TrialRun> runs = new ArrayList<>(Published.yarn());
        runs.set(3, new TrialRun(runs.get(3).fractions(), List.of(), Optional.of(24.8), 1));
        MixtureFit fit = Published.fit(runs, Blending.QUADRATIC, Fitting.Selection.NONE);
        assertThat(fit.said()).anyMatch(sentence -> sentence.startsWith("Run 4 does not fit"));
        assertThat(fit.fit().observations()).isEqualTo(15);
        assertThat(Published.fit(Published.yarn(), Blending.QUADRATIC, Fitting.Selection.NONE)
                        .said())
                .noneMatch(sentence -> sentence.contains("does not fit the others"));
    }

    @Test
    void responsesWithoutScatterHaveNoOutlierAndTheFitIsCalledExact() {
        MixtureFit whole = Published.fit(Published.yarn(), Blending.QUADRATIC, Fitting.Selection.NONE);
        List<TrialRun> plain = Published.yarn().stream()
                .map(run -> new TrialRun(
                        run.fractions(),
                        List.of(),
                        Optional.of(whole.at(run.fractions().stream()
                                .mapToDouble(Double::doubleValue)
                                .toArray())),
                        1))
                .toList();
        MixtureFit fit = Published.fit(plain, Blending.QUADRATIC, Fitting.Selection.NONE);
        assertThat(fit.fit().exact()).isTrue();
        assertThat(fit.fit().studentisedResiduals()).allMatch(one -> one == 0);
        assertThat(fit.said()).hasSize(1).first().asString().startsWith("The fit is exact");
        List<TrialRun> off = new ArrayList<>(plain);
        off.set(3, new TrialRun(plain.get(3).fractions(), List.of(), Optional.of(24.8), 1));
        assertThat(Published.fit(off, Blending.QUADRATIC, Fitting.Selection.NONE)
                        .said())
                .describedAs("one that is really off still stands out")
                .anyMatch(sentence -> sentence.startsWith("Run 4 does not fit"));
    }

    @Test
    void selectionDropsWhatIsNotNeededAndKeepsTheHierarchy() {
        MixtureFit backward = Published.fit(Published.etch(), Blending.SPECIAL_CUBIC, Fitting.Selection.BACKWARD);
        assertThat(backward.terms()).hasSize(7);
        MixtureFit linearTruth = Published.fit(straight(), Blending.SPECIAL_CUBIC, Fitting.Selection.AKAIKE);
        assertThat(linearTruth.terms()).hasSize(3);
        assertThat(linearTruth.said()).anyMatch(sentence -> sentence.contains("not needed"));
    }

    /** A straight blend with scatter from a seed. */
    private static List<TrialRun> straight() {
        List<TrialRun> runs = new ArrayList<>();
        SplittableRandom random = new SplittableRandom(11);
        for (TrialRun run : Published.etch()) {
            double y = 10 * run.fractions().get(0)
                    + 20 * run.fractions().get(1)
                    + 5 * run.fractions().get(2);
            runs.add(new TrialRun(run.fractions(), List.of(), Optional.of(y + random.nextDouble(-0.3, 0.3)), 1));
        }
        return runs;
    }

    @Test
    void aDayThatIsOffByAConstantChangesNoBlendingDifference() {
        List<TrialRun> plain = Published.yarn();
        List<TrialRun> shifted = new ArrayList<>();
        for (int i = 0; i < plain.size(); i++) {
            TrialRun run = plain.get(i);
            shifted.add(new TrialRun(run.fractions(), List.of(), run.response().map(y -> y), 1 + i % 2));
        }
        List<TrialRun> off = shifted.stream()
                .map(run -> new TrialRun(
                        run.fractions(), List.of(), run.response().map(y -> run.block() == 2 ? y + 5 : y), run.block()))
                .toList();
        MixtureFit a = Published.fit(shifted, Blending.QUADRATIC, Fitting.Selection.NONE);
        MixtureFit b = Published.fit(off, Blending.QUADRATIC, Fitting.Selection.NONE);
        assertThat(b.at(new double[] {1, 0, 0}) - a.at(new double[] {1, 0, 0})).isCloseTo(2.5, within(1e-9));
        assertThat(b.fit().errorSquares()).isCloseTo(a.fit().errorSquares(), within(1e-9));
    }

    @Test
    void aRunAloneOnItsDayIsLeftOutAndChangesNothing() {
        MixtureFit without = Published.fit(Published.yarn(), Blending.QUADRATIC, Fitting.Selection.NONE);
        List<TrialRun> runs = new ArrayList<>(Published.yarn());
        runs.add(4, new TrialRun(List.of(0.25, 0.25, 0.5), List.of(), Optional.of(99.0), 2));
        MixtureFit with = Published.fit(runs, Blending.QUADRATIC, Fitting.Selection.NONE);
        assertThat(with.fit()).isEqualTo(without.fit());
        assertThat(with.taken().alone()).containsExactly(4);
        assertThat(with.taken().days()).containsExactly(1);
        runs.add(new TrialRun(List.of(0.25, 0.5, 0.25), List.of(), Optional.of(14.0), 2));
        assertThat(Published.fit(runs, Blending.QUADRATIC, Fitting.Selection.NONE)
                        .taken())
                .describedAs("two on that day tell something of the mixture")
                .satisfies(taken -> assertThat(taken.runs()).hasSize(17))
                .satisfies(taken -> assertThat(taken.days()).containsExactly(1, 2));
    }

    @Test
    void desirabilityFindsTheCompromise() {
        MixtureFit yarn = Published.fit(Published.yarn(), Blending.QUADRATIC, Fitting.Selection.NONE);
        Wish near = new Wish(Wish.Aim.TARGET, 12, 15, 18, 1);
        Optimum.Best best = Optimum.desirable(THREE, 0, List.of(new Optimum.Wanted(yarn, near)));
        assertThat(best.value()).isCloseTo(1, within(1e-6));
        assertThat(yarn.at(best.array())).isCloseTo(15, within(1e-5));
    }

    @Test
    void anotherRunIsWorthMostWhereTheModelIsLeastSure() {
        MixtureFit yarn = Published.fit(Published.yarn(), Blending.QUADRATIC, Fitting.Selection.NONE);
        Optimum.Best worth = Optimum.worthAnotherRun(yarn);
        assertThat(worth.value()).describedAs("a pure blend, made twice").isCloseTo(0.5, within(1e-9));
    }
}
