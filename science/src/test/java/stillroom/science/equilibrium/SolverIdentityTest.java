package stillroom.science.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static stillroom.science.equilibrium.Acids.at25;

import org.junit.jupiter.api.Test;

/** What must hold for every mixture. */
class SolverIdentityTest {

    private static final long SEED = 4711;

    @Test
    void everyRandomMixtureConverges() {
        RandomSolutions random = new RandomSolutions(SEED);
        int inRange = 0;
        for (int i = 0; i < 120_000; i++) {
            Solution solution = random.next(0.2, true);
            Equilibrium answer = Acids.SOLVER.solve(solution);
            if (!answer.converged()) {
                throw new AssertionError("seed " + SEED + " case " + i + " residual " + answer.chargeResidualMolPerKg()
                        + " " + solution);
            }
            inRange += answer.inRange() ? 1 : 0;
        }
        assertThat(inRange).isGreaterThan(100_000);
    }

    @Test
    void beyondTheRangeTheAnswerIsMarkedAndNeverThrown() {
        RandomSolutions random = new RandomSolutions(SEED + 1);
        int beyond = 0;
        for (int i = 0; i < 20_000; i++) {
            Equilibrium answer = Acids.SOLVER.solve(random.next(60, true));
            assertThat(answer.pH()).isFinite();
            if (answer.ionicStrengthMolPerKg() > 0.5) {
                assertThat(answer.exceeded()).contains(RangeLimit.IONIC_STRENGTH);
                beyond++;
            }
        }
        assertThat(beyond).isGreaterThan(10_000);
    }

    @Test
    void moreBaseMeansHigherPh() {
        RandomSolutions random = new RandomSolutions(SEED + 2);
        for (int i = 0; i < 20_000; i++) {
            Solution solution = random.next(0.05, true);
            Equilibrium before = Acids.SOLVER.solve(solution);
            Equilibrium after = Acids.SOLVER.solve(solution.withIon("Na+", 1, 0.001));
            if (after.inRange()) {
                assertThat(after.pH())
                        .as("seed %d case %d %s", SEED + 2, i, solution)
                        .isGreaterThan(before.pH());
            }
        }
    }

    @Test
    void bufferCapacityIsTheSlopeOfTheTitration() {
        RandomSolutions random = new RandomSolutions(SEED + 3);
        for (int i = 0; i < 2_000; i++) {
            Solution solution = random.next(0.05, true);
            Equilibrium answer = Acids.SOLVER.solve(solution);
            double small = 1e-4 * answer.bufferCapacityMolPerKg();
            double up = Acids.pH(solution.withIon("Na+", 1, small));
            double down = Acids.pH(solution.withIon("Na+", 1, 2 * small));
            double second = 2 * small / (4 * up - 3 * answer.pH() - down);
            assertThat(second / answer.bufferCapacityMolPerKg())
                    .as("case %d %s", i, solution)
                    .isCloseTo(1, within(1e-4));
        }
    }

    @Test
    void speciesAddUpToTheirComponentAndToZeroCharge() {
        Solution solution = at25().with(Acids.CITRIC, 0.02)
                .with(Acids.GLYCINE, 0.05)
                .with(Acids.EDTA, 0.004)
                .with(Acids.ARGININE, 0.01)
                .withIon("Na+", 1, 0.03);
        Equilibrium answer = Acids.SOLVER.solve(solution);
        double charge = answer.species().stream()
                .mapToDouble(s -> s.charge() * s.molPerKg())
                .sum();
        assertThat(charge).isCloseTo(0, within(1e-10));
        for (Component component : solution.components()) {
            double sum = answer.species().stream()
                    .filter(s -> s.name().equals(component.system().name()))
                    .mapToDouble(Species::molPerKg)
                    .sum();
            assertThat(sum).isCloseTo(component.molPerKg(), within(1e-15));
        }
    }

    /** Every step's law of mass action, recomputed from the species handed out. */
    @Test
    void speciesObeyTheirConstants() {
        Equilibrium answer = Acids.SOLVER.solve(at25().with(Acids.EDTA, 0.01).withIon("Na+", 1, 0.025));
        var forms =
                answer.species().stream().filter(s -> s.name().equals("edta")).toList();
        for (int j = 1; j < forms.size(); j++) {
            double up = forms.get(j - 1).molPerKg() * forms.get(j - 1).activityCoefficient();
            double down = forms.get(j).molPerKg() * forms.get(j).activityCoefficient();
            double pKa = answer.pH() - Math.log10(down / up);
            assertThat(pKa).isCloseTo(Acids.EDTA.steps().get(j - 1).pKa(), within(1e-9));
        }
    }

    /** Water under air of 420 ppm carbon dioxide: 5.61, a common textbook figure, no single source (5.6 to 5.65). */
    @Test
    void rainIsSour() {
        Solution rain = at25().openTo(new DissolvedGas(Acids.CARBONIC, 0.034, -19.98, 0.00042));
        assertThat(Acids.pH(rain)).isCloseTo(5.61, within(0.02));
    }

    /** Open to the air, the dissolved gas keeps its amount whatever is added. */
    @Test
    void openGasKeepsItsNeutralForm() {
        DissolvedGas gas = new DissolvedGas(Acids.CARBONIC, 0.034, -19.98, 0.00042);
        Equilibrium answer = Acids.SOLVER.solve(at25().withIon("Na+", 1, 0.01).openTo(gas));
        double neutral = answer.species().stream()
                .filter(s -> s.name().equals("carbonic") && s.protonsLost() == 0)
                .findFirst()
                .orElseThrow()
                .molPerKg();
        assertThat(neutral).isCloseTo(0.034 * 0.00042, within(1e-15));
        assertThat(answer.converged()).isTrue();
    }
}
