package stillroom.science.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Curves against R's nls on the same invented readings; engines/fit/README.md says how it was run. */
class CurvesByRTest {
    private static final double DIGITS = 1e-6;

    @Test
    void flow() throws IOException {
        String[] names = {"power", "carreau", "herschel"};
        for (FlowCurve.Model model : FlowCurve.Model.values()) {
            String name = names[model.ordinal()];
            List<FlowPoint> points = rows("flow.csv").stream()
                    .map(row -> new FlowPoint(row.get(0), row.get(1 + model.ordinal())))
                    .toList();
            FlowCurve best = FlowCurve.fit(points).get(0);
            assertThat(best.model()).isEqualTo(model);
            agree("flow." + name + ".parameters", best.parameters());
            agree("flow." + name + ".errors", best.fit().standardErrors());
            agree("flow." + name + ".sse", List.of(best.fit().errorSquares()));
        }
    }

    @Test
    void salt() throws IOException {
        String[] names = {"parabola", "bell", "skewed"};
        for (SaltCurve.Shape shape : SaltCurve.Shape.values()) {
            String name = names[shape.ordinal()];
            List<SaltPoint> points = rows("salt.csv").stream()
                    .map(row -> new SaltPoint(row.get(0), row.get(1 + shape.ordinal())))
                    .toList();
            SaltCurve curve = SaltCurve.fit(points).orElseThrow();
            assertThat(curve.shape()).isEqualTo(shape);
            agree("salt." + name + ".parameters", curve.fit().parameters());
            agree("salt." + name + ".errors", curve.fit().standardErrors());
            agree("salt." + name + ".sse", List.of(curve.fit().errorSquares()));
            double ninetyFive = 2.364624251592784; // t of R, qt(0.975, 7)
            assertThat(curve.peakHalfWidth())
                    .isCloseTo(ninetyFive * figures("salt." + name + ".errors").get(1), within(DIGITS));
        }
    }

    private static void agree(String name, List<Double> ours) throws IOException {
        List<Double> theirs = figures(name);
        assertThat(ours).describedAs(name).hasSameSizeAs(theirs);
        for (int k = 0; k < theirs.size(); k++) {
            assertThat(Math.abs(ours.get(k)) / Math.abs(theirs.get(k)))
                    .describedAs(name + " " + (k + 1))
                    .isCloseTo(1, within(DIGITS));
        }
    }

    private static List<List<Double>> rows(String file) throws IOException {
        return lines(file)
                .skip(1)
                .map(line -> Stream.of(line.split(",")).map(Double::valueOf).toList())
                .toList();
    }

    private static List<Double> figures(String name) throws IOException {
        return lines("fits.txt")
                .filter(line -> line.startsWith(name + " "))
                .findFirst()
                .map(line -> Stream.of(line.substring(name.length()).trim().split(" +"))
                        .map(Double::valueOf)
                        .toList())
                .orElseThrow();
    }

    private static Stream<String> lines(String file) throws IOException {
        try (var in = CurvesByRTest.class.getResourceAsStream("/engines/fit/" + file)) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8).lines();
        }
    }
}
