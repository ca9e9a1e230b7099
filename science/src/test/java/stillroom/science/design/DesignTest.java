package stillroom.science.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import stillroom.science.mixture.Blending;
import stillroom.science.mixture.LinearConstraint;
import stillroom.science.mixture.MixtureModel;
import stillroom.science.mixture.MixtureRegion;
import stillroom.science.mixture.ProcessTerms;

class DesignTest {
    private static final MixtureRegion THREE = MixtureRegion.simplex(3);

    @Test
    void theSameSeedGivesTheSameDesign() {
        DesignTask task = Designs.task(Designs.BOUNDED_FOUR, Blending.QUADRATIC, 13, DesignTask.Wishes.plain());
        assertThat(Designs.found(task)).isEqualTo(Designs.found(task));
    }

    @Test
    void theWorkIsCountedSoThatAHardProblemEndsWithoutAClock() {
        DesignTask task = Designs.task(Designs.BOUNDED_EIGHT, Blending.QUADRATIC, 45, DesignTask.Wishes.plain());
        MixtureDesign design = Designs.found(task);
        assertThat(design.effort().stopped()).isTrue();
        assertThat(design.effort().multiplications()).isLessThan((long) (1.1 * OptimalDesigns.USUAL_EFFORT));
        assertThat(design.dCeiling().orElseThrow()).isGreaterThan(design.d());
    }

    /** Equal weights on the {3,2} lattice are optimal (kiefer-1960): det(X'X) = 4^-6 there, so D = (1/4)/6. */
    @Test
    void theCeilingIsThatOfTheWeightedOptimumWhateverTheRuns() {
        for (int runs = 6; runs <= 14; runs++) {
            for (long seed = 1; seed <= 6; seed++) {
                DesignTask.Wishes wishes = new DesignTask.Wishes(Criterion.D, 1, 0, List.of(), seed);
                DesignTask task = Designs.task(THREE, Blending.QUADRATIC, runs, wishes);
                MixtureDesign design = OptimalDesigns.search(task, OptimalDesigns.USUAL_EFFORT / 8, () -> false)
                        .match(DesignAnswer.Found::design, refused -> {
                            throw new AssertionError(refused.reasons());
                        });
                assertThat(design.dCeiling().orElseThrow())
                        .describedAs(runs + " runs, seed " + seed)
                        .isCloseTo(1 / 24.0, within(1e-7));
            }
        }
    }

    @Test
    void fewerRunsThanTermsAreRefused() {
        assertThat(Designs.refused(Designs.task(THREE, Blending.QUADRATIC, 5, DesignTask.Wishes.plain())))
                .singleElement()
                .asString()
                .contains("5 runs")
                .contains("6 terms");
    }

    @Test
    void aFlatRegionIsRefusedInWords() {
        MixtureRegion flat = new MixtureRegion(
                THREE.lower(), THREE.upper(), List.of(new LinearConstraint(List.of(1.0, 0.0, 0.0), .2, .2)));
        assertThat(Designs.refused(Designs.task(flat, Blending.QUADRATIC, 9, DesignTask.Wishes.plain())))
                .singleElement()
                .asString()
                .contains("too narrow");
    }

    @Test
    void nineRunsInThreeBlocksAreOrthogonalToThem() {
        MixtureDesign design =
                Designs.found(Designs.task(THREE, Blending.LINEAR, 9, Designs.wishes(Criterion.D, 3, 0, List.of())));
        assertThat(design.blockEfficiency())
                .describedAs("three pure components in each of three blocks")
                .isCloseTo(1, within(1e-9));
        for (int block = 1; block <= 3; block++) {
            int number = block;
            assertThat(design.runs().stream().filter(run -> run.block() == number))
                    .hasSize(3);
        }
    }

    @Test
    void wantedRepeatsAreThere() {
        MixtureDesign design = Designs.found(Designs.task(
                Designs.BOUNDED_FOUR, Blending.QUADRATIC, 16, Designs.wishes(Criterion.D, 1, 3, List.of())));
        assertThat(design.runs()).hasSize(16);
        assertThat(design.repeats()).isGreaterThanOrEqualTo(3);
    }

    @Test
    void runsAlreadyMadeAreKeptAndBuiltUpon() {
        List<Run> made = ClassicalDesigns.lattice(3, 2);
        MixtureDesign design =
                Designs.found(Designs.task(THREE, Blending.SPECIAL_CUBIC, 9, Designs.wishes(Criterion.D, 1, 0, made)));
        assertThat(design.runs().subList(0, 6)).isEqualTo(made);
        assertThat(design.runs().subList(6, 9))
                .describedAs("only an inner point tells the cubic term")
                .anyMatch(run -> run.fractions().stream().allMatch(x -> x > 0.1));
    }

    @Test
    void anIOptimalDesignPredictsBetterThanADOptimalOne() {
        MixtureDesign forCoefficients =
                Designs.found(Designs.task(THREE, Blending.QUADRATIC, 12, DesignTask.Wishes.plain()));
        MixtureDesign forPredictions = Designs.found(
                Designs.task(THREE, Blending.QUADRATIC, 12, Designs.wishes(Criterion.I, 1, 0, List.of())));
        assertThat(forPredictions.meanVariance()).isLessThan(0.9 * forCoefficients.meanVariance());
        assertThat(forPredictions.d()).isLessThan(forCoefficients.d());
    }

    @Test
    void processVariablesStandAtTheirLevels() {
        MixtureModel model = MixtureModel.of(3, Blending.QUADRATIC, 1, ProcessTerms.QUADRATIC);
        MixtureDesign design = Designs.found(new DesignTask(THREE, model, 16, DesignTask.Wishes.plain()));
        assertThat(model.terms()).hasSize(6 + 3 + 1);
        assertThat(design.runs())
                .allMatch(run -> List.of(-1.0, 0.0, 1.0).contains(run.process().get(0)));
        assertThat(design.runs().stream().map(Run::process).distinct()).hasSize(3);
    }

    /** Source: scheffe-1958: C(q + m - 1, m) points; scheffe-1963: 2^q - 1 points. */
    @Test
    void classicalDesignsHaveTheTextbooksCounts() {
        assertThat(ClassicalDesigns.lattice(3, 2)).hasSize(6);
        assertThat(ClassicalDesigns.lattice(4, 3)).hasSize(20);
        assertThat(ClassicalDesigns.centroid(4)).hasSize(15);
        assertThat(ClassicalDesigns.lattice(3, 3).get(1).fractions())
                .isEqualTo(List.of(0.666666666667, 0.333333333333, 0.0));
    }
}
