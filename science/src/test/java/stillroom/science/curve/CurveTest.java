package stillroom.science.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Curves of known shape with scatter from a seed: invented, as the truth has to be known. */
class CurveTest {

    private static List<SaltPoint> bell(double peak, double scatter, long seed, double... doses) {
        SplittableRandom random = new SplittableRandom(seed);
        List<SaltPoint> points = new ArrayList<>();
        for (double dose : doses) {
            double truth = 8000 * Math.exp(-0.5 * Math.pow((dose - peak) / 0.9, 2));
            points.add(new SaltPoint(dose, truth * (1 + scatter * (2 * random.nextDouble() - 1))));
        }
        return points;
    }

    @Test
    void thePeakIsFoundAndItsIntervalHoldsIt() {
        int held = 0;
        for (long seed = 1; seed <= 40; seed++) {
            SaltCurve curve = SaltCurve.fit(bell(3, 0.04, seed, 1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5))
                    .orElseThrow();
            assertThat(curve.peakDose()).isCloseTo(3, within(0.3));
            held += Math.abs(curve.peakDose() - 3) <= curve.peakHalfWidth() ? 1 : 0;
        }
        assertThat(held).describedAs("of 40 intervals at 95 %").isGreaterThanOrEqualTo(33);
    }

    @Test
    void theDoseIsOnTheRisingSideAndStopsAtEightyPercentOfThePeak() {
        SaltCurve curve =
                SaltCurve.fit(bell(3, 0.01, 7, 1, 1.5, 2, 2.5, 3, 3.5, 4)).orElseThrow();
        SaltCurve.Dose dose = curve.doseFor(3000).orElseThrow();
        assertThat(curve.at(dose.dose())).isCloseTo(3000, within(1e-6 * 3000));
        assertThat(dose.dose()).isLessThan(0.8 * curve.peakDose());
        assertThat(dose.halfWidth()).isBetween(0.0, 0.3);
        assertThat(curve.advisedUpTo()).isLessThanOrEqualTo(0.8 * curve.peakDose());
        assertThat(curve.doseFor(7900))
                .describedAs("reached near the peak only")
                .isEmpty();
        assertThat(curve.doseFor(9000)).isEmpty();
    }

    @Test
    void aPeakBeyondTheReadingsIsCalledAGuess() {
        SaltCurve curve =
                SaltCurve.fit(bell(3, 0.0, 1, 0.8, 1.2, 1.6, 2.0, 2.4)).orElseThrow();
        assertThat(curve.said()).anyMatch(sentence -> sentence.contains("outside the readings"));
    }

    @Test
    void tooFewReadingsTellNothing() {
        assertThat(SaltCurve.fit(bell(3, 0, 1, 1, 2, 3))).isEmpty();
    }

    @Test
    void eachModelOfFlowIsRecognisedByItsOwnData() {
        double[][] truths = {{12, 0.4}, {30, 0.05, 2, 0.3}, {15, 3, 0.5}};
        for (FlowCurve.Model model : FlowCurve.Model.values()) {
            SplittableRandom random = new SplittableRandom(5);
            List<FlowPoint> points = new ArrayList<>();
            double[] truth = truths[model.ordinal()];
            for (double g = 0.01; g < 2000; g *= 2) {
                points.add(new FlowPoint(g, model.at(g, truth) * (1 + 0.01 * (2 * random.nextDouble() - 1))));
            }
            List<FlowCurve> fitted = FlowCurve.fit(points);
            assertThat(fitted.get(0).model()).isEqualTo(model);
            for (int k = 0; k < truth.length; k++) {
                assertThat(fitted.get(0).parameters().get(k) / truth[k])
                        .describedAs(model + " " + model.names().get(k))
                        .isCloseTo(1, within(0.15));
            }
        }
    }

    @Test
    void readingsAreComparedOnlyUnderTheSameConditions() {
        Conditions one = new Conditions("rotational", Conditions.Geometry.DISC_SPINDLE, "R4", "20", "600 ml", 25, 24);
        Conditions other = new Conditions("rotational", Conditions.Geometry.DISC_SPINDLE, "R5", "20", "600 ml", 22, 24);
        assertThat(one.differences(one)).isEmpty();
        assertThat(one.differences(other)).containsExactly("spindle", "temperature");
        assertThat(one.geometry().definedShearRate()).isFalse();
    }
}
