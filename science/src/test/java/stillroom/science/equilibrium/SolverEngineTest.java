package stillroom.science.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static stillroom.science.equilibrium.Acids.at25;

import org.junit.jupiter.api.Test;

/** Against the plain reference solver of the same model: equal to 1e-8 pH. */
class SolverEngineTest {

    @Test
    void randomSolutionsAgree() {
        RandomSolutions random = new RandomSolutions(20261125);
        int compared = 0;
        for (int i = 0; i < 600; i++) {
            Solution solution = random.next(0.05, false);
            Equilibrium answer = Acids.SOLVER.solve(solution);
            if (answer.inRange()) {
                assertThat(answer.pH())
                        .as("solution %d: %s", i, solution)
                        .isCloseTo(new ReferenceSolver(solution).pH(), within(1e-8));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(500);
    }

    /** 1,001 points of 0.02 mol/kg citric acid with sodium hydroxide, 0 to 0.1 mol/kg; each also moves upwards. */
    @Test
    void titrationAgrees() {
        double before = 0;
        for (int i = 0; i <= 1000; i++) {
            Solution solution = at25().with(Acids.CITRIC, 0.02).withIon("Na+", 1, 0.0001 * i);
            double pH = Acids.pH(solution);
            assertThat(pH).isGreaterThan(before);
            before = pH;
            if (i % 7 == 0 || (i > 590 && i < 610)) {
                assertThat(pH).as("point %d", i).isCloseTo(new ReferenceSolver(solution).pH(), within(1e-8));
            }
        }
    }
}
