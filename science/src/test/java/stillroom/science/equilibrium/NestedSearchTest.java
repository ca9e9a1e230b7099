package stillroom.science.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The fallback gives the answer of the fast way. */
class NestedSearchTest {
    @Test
    void agreesWithNewton() {
        RandomSolutions random = new RandomSolutions(99);
        for (int i = 0; i < 3_000; i++) {
            Solution solution = random.next(0.05, true);
            Equilibrium fast = Acids.SOLVER.solve(solution);
            if (fast.inRange()) {
                ChargeBalance balance = new ChargeBalance(solution, WaterModel.STANDARD);
                Equilibrium slow = new NestedSearch(balance).solve(solution, WaterModel.STANDARD, 0);
                assertThat(slow.pH()).as("case %d %s", i, solution).isCloseTo(fast.pH(), within(2e-9));
            }
        }
    }
}
