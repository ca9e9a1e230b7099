package stillroom.formulary.reformulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import stillroom.science.blend.BlendAnswer;
import stillroom.science.blend.BlendSolver;
import stillroom.science.blend.Patience;

/** Where emulsifiers and oils both move, against many problems in which what the oils require stands still. */
class AgainstOilsTest {
    private static final double ROOM = 0.4;
    private static final int STEPS = 40;

    @Test
    void noBetterBlendKeepsTheDistance() {
        Bands wide = Bands.USUAL
                .withOwn(Requirements.HLB, 4)
                .withOwn(Requirements.REQUIRED_HLB, 3)
                .withOwn(Requirements.AGAINST, ROOM);
        Problem problem = Problem.of(
                Lotion.recast(), Lotion.shelf(), Wish.of(Goal.LOWEST_COST).with(wide));
        AgainstOils.Solved solved = AgainstOils.solve(problem, Patience.ENDLESS);
        BlendAnswer.Optimal best = (BlendAnswer.Optimal) solved.answer();
        List<Double> fractions = best.best().fractions();
        assertThat(AgainstOils.off(problem, fractions)).isLessThanOrEqualTo(ROOM + AgainstOils.WITHIN);
        double unbound = BlendSolver.solve(problem.drawn(), Patience.ENDLESS)
                .match(BlendAnswer.Optimal::objective, BlendAnswer.Stopped::objective, none -> Double.NaN);
        assertThat(best.objective()).as("the distance costs something").isGreaterThan(unbound + 1e-6);
        double required = problem.present().requiredHlb().orElseThrow();
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k <= STEPS; k++) {
            double at = required - 3 + 6.0 * k / STEPS;
            Problem still = AgainstOils.narrowed(problem, at, at, ROOM);
            double objective = BlendSolver.solve(still.drawn(), Patience.ENDLESS)
                    .match(
                            BlendAnswer.Optimal::objective,
                            BlendAnswer.Stopped::objective,
                            none -> Double.POSITIVE_INFINITY);
            least = Math.min(least, objective);
        }
        assertThat(best.objective()).isLessThanOrEqualTo(least + 1e-9);
        assertThat(best.objective()).as("nor much better than on the grid").isCloseTo(least, within(0.02));
    }
}
