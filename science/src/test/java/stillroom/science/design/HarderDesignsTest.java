package stillroom.science.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillroom.science.mixture.Blending;
import stillroom.science.mixture.LinearConstraint;
import stillroom.science.mixture.MixtureModel;
import stillroom.science.mixture.MixtureRegion;
import stillroom.science.mixture.ProcessTerms;

/** Against plain exchange from 130 random starts, run in R 4.2.2; engines/design/README.md says how. */
class HarderDesignsTest {
    /** Eight components and many equal corners: R worked 16 seconds for each D, which takes more than the usual effort. */
    private static final Map<String, Integer> HARDEST = Map.of("hard-16", 3, "hard-18", 2);

    private record Problem(String name, DesignTask task) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Problem> problems() throws IOException {
        return lines("problems.txt").map(HarderDesignsTest::problem);
    }

    @ParameterizedTest
    @MethodSource("problems")
    void reachesWhatPlainExchangeReaches(Problem problem) throws IOException {
        double reference = lines("reference.txt")
                .map(line -> line.split(";"))
                .filter(fields -> fields[0].equals(problem.name()))
                .mapToDouble(fields -> Math.max(Double.parseDouble(fields[1]), Double.parseDouble(fields[2])))
                .findFirst()
                .orElseThrow();
        double few = problem.task().region().components() <= 5 ? 0.3 : 1;
        double times = HARDEST.containsKey(problem.name()) ? HARDEST.get(problem.name()) : few;
        MixtureDesign design = found(problem.task(), times);
        assertThat(design.d() / reference).isGreaterThan(1 - 1e-10);
        assertThat(design.dCeiling().orElseThrow()).isGreaterThan(design.d());
        assertThat(design.runs())
                .allMatch(run -> problem.task()
                        .region()
                        .contains(
                                run.fractions().stream()
                                        .mapToDouble(Double::doubleValue)
                                        .toArray(),
                                1e-9));
    }

    private static MixtureDesign found(DesignTask task, double times) {
        return OptimalDesigns.search(task, (long) (times * OptimalDesigns.USUAL_EFFORT), () -> false)
                .match(DesignAnswer.Found::design, refused -> {
                    throw new AssertionError(refused.reasons());
                });
    }

    private static Problem problem(String line) {
        String[] fields = line.split(";");
        List<LinearConstraint> constraints = new ArrayList<>();
        for (String cut : fields[3].split(",")) {
            String[] parts = cut.split("\\|");
            constraints.add(new LinearConstraint(
                    figures(parts[0]), Double.parseDouble(parts[1]), Double.parseDouble(parts[2])));
        }
        MixtureRegion region = new MixtureRegion(figures(fields[1]), figures(fields[2]), constraints);
        Blending blending = Blending.valueOf(fields[4].toUpperCase(Locale.ROOT).replace('-', '_'));
        int processes = Integer.parseInt(fields[5]);
        MixtureModel model = processes == 0
                ? MixtureModel.of(region.components(), blending)
                : MixtureModel.of(
                        region.components(),
                        blending,
                        processes,
                        ProcessTerms.valueOf(fields[6].toUpperCase(Locale.ROOT)));
        return new Problem(
                fields[0], new DesignTask(region, model, Integer.parseInt(fields[7]), DesignTask.Wishes.plain()));
    }

    private static List<Double> figures(String text) {
        return Stream.of(text.trim().split(" +")).map(Double::valueOf).toList();
    }

    private static Stream<String> lines(String file) throws IOException {
        try (var in = HarderDesignsTest.class.getResourceAsStream("/engines/design/" + file)) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8).lines();
        }
    }
}
