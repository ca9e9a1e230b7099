package stillroom.science.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import stillroom.science.equilibrium.AcidBase;
import stillroom.science.equilibrium.EquilibriumSolver;
import stillroom.science.equilibrium.Solution;
import stillroom.science.equilibrium.WaterModel;

/** Time of one solve: a titration of citric acid, and mixtures of 1 to 40 components. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class EquilibriumBenchmark {

    private static final int POINTS = 1001;
    private static final AcidBase CITRIC = AcidBase.of("citric", 0, 3.128, 4.761, 6.396);

    private final EquilibriumSolver solver = new EquilibriumSolver(WaterModel.STANDARD);
    private final List<Solution> titration = new ArrayList<>();
    private int next;

    @Setup
    public void prepare() {
        for (int i = 0; i < POINTS; i++) {
            titration.add(Solution.water(25).with(CITRIC, 0.02).withIon("Na+", 1, 0.07 * i / (POINTS - 1)));
        }
    }

    /** Each call another of 1,001 independent points. */
    @Benchmark
    public double citricAcidWithSodiumHydroxide() {
        next = next + 1 == POINTS ? 0 : next + 1;
        return solver.solve(titration.get(next)).pH();
    }

    /** Mixtures of a number of different acids and bases at 30 °C, partly neutralised. */
    @State(Scope.Thread)
    public static class Mixture {
        @Param({"1", "5", "10", "20", "40"})
        int components;

        List<Solution> solutions = new ArrayList<>();
        int next;

        @Setup
        public void prepare() {
            for (int i = 0; i < 100; i++) {
                Solution solution = Solution.water(30).withIon("Na+", 1, 0.0004 * i);
                for (int c = 0; c < components; c++) {
                    double shift = 0.03 * c;
                    AcidBase system = switch (c % 4) {
                        case 0 -> AcidBase.of("tribasic" + c, 0, 3.1 + shift, 4.7 + shift, 6.3 + shift);
                        case 1 -> AcidBase.of("amino" + c, 1, 2.3 + shift, 9.7 - shift);
                        case 2 -> AcidBase.of("acid" + c, 0, 4.2 + shift);
                        default -> AcidBase.of("base" + c, 1, 8.0 + shift);
                    };
                    solution = solution.with(system, 0.04 / components);
                }
                solutions.add(solution);
            }
        }
    }

    @Benchmark
    public double mixture(Mixture mixture) {
        mixture.next = mixture.next + 1 == mixture.solutions.size() ? 0 : mixture.next + 1;
        return solver.solve(mixture.solutions.get(mixture.next)).pH();
    }
}
