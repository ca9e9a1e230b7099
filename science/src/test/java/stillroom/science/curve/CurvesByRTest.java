package stillroom.science.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import stillroom.science.regression.StoredFits;

/** Curves against R's nls on the same invented readings; engines/fit/README.md says how it was run. */
class CurvesByRTest {
    private static final double DIGITS = 1e-6;

    @Test
    void flow() throws IOException {
        String[] names = {"power", "carreau", "herschel"};
        for (FlowCurve.Model model : FlowCurve.Model.values()) {
            String name = names[model.ordinal()];
            List<FlowPoint> points = StoredFits.rows("flow.csv").stream()
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
            List<SaltPoint> points = StoredFits.rows("salt.csv").stream()
                    .map(row -> new SaltPoint(row.get(0), row.get(1 + shape.ordinal())))
                    .toList();
            SaltCurve curve = SaltCurve.fit(points).orElseThrow();
            assertThat(curve.shape()).isEqualTo(shape);
            agree("salt." + name + ".parameters", curve.fit().parameters());
            agree("salt." + name + ".errors", curve.fit().standardErrors());
            agree("salt." + name + ".sse", List.of(curve.fit().errorSquares()));
            double ninetyFive = 2.364624251592784; // t of R, qt(0.975, 7)
            assertThat(curve.peakHalfWidth())
                    .isCloseTo(
                            ninetyFive
                                    * StoredFits.figures("salt." + name + ".errors")
                                            .get(1),
                            within(DIGITS));
        }
    }

    private static void agree(String name, List<Double> ours) throws IOException {
        List<Double> theirs = StoredFits.figures(name);
        assertThat(ours).describedAs(name).hasSameSizeAs(theirs);
        for (int k = 0; k < theirs.size(); k++) {
            assertThat(Math.abs(ours.get(k)) / Math.abs(theirs.get(k)))
                    .describedAs(name + " " + (k + 1))
                    .isCloseTo(1, within(DIGITS));
        }
    }
}
