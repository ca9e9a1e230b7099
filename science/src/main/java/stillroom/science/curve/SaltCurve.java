package stillroom.science.curve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import stillroom.science.regression.NonlinearFit;

/**
 * Viscosity against the dose of salt or thickener, with a maximum. Three shapes are fitted and the one with the lowest
 * corrected Akaike criterion is taken; all are compared on the scale of the viscosity itself.
 *
 * @param shape chosen
 * @param fit its parameters: height at the peak, position of the peak, and width (or curvature)
 * @param peakDose dose at the maximum [mass percent]
 * @param peakHalfWidth half the width of its 95 % interval; infinite where the readings do not tell [mass percent]
 * @param peakViscosity at the maximum
 * @param said what the maker ought to know of it, in sentences
 */
public record SaltCurve(
        Shape shape, NonlinearFit fit, double peakDose, double peakHalfWidth, double peakViscosity, List<String> said) {
    /** Past this share of the peak's dose no advice is given: a little more salt would thin it again (common practice, no source). */
    public static final double SAFE_SHARE = 0.8;

    public SaltCurve {
        said = List.copyOf(said);
    }

    /** Shapes of the curve; x0 is the peak's dose, h the height there, w a width. */
    public enum Shape {
        /** h (1 - ((x - x0)/w)²). */
        PARABOLA,
        /** h exp(-((x - x0)/w)²/2), so that the logarithm is a parabola. */
        BELL,
        /** h exp(-(ln(x/x0)/w)²/2): steep before the peak, long after it. */
        SKEWED_BELL;

        double at(double x, double[] p) {
            return switch (this) {
                case PARABOLA -> p[0] * (1 - square((x - p[1]) / p[2]));
                case BELL -> p[0] * Math.exp(-0.5 * square((x - p[1]) / p[2]));
                case SKEWED_BELL -> x <= 0 || p[1] <= 0 ? 0 : p[0] * Math.exp(-0.5 * square(Math.log(x / p[1]) / p[2]));
            };
        }

        private static double square(double a) {
            return a * a;
        }
    }

    /** The best shape; empty where fewer than five readings or none of them settles. */
    public static Optional<SaltCurve> fit(List<SaltPoint> points) {
        if (points.stream().map(SaltPoint::dose).distinct().count() < 4 || points.size() < 5) {
            return Optional.empty();
        }
        SaltPoint top = points.stream()
                .max(Comparator.comparingDouble(SaltPoint::viscosity))
                .orElseThrow();
        List<SaltCurve> fitted = new ArrayList<>();
        for (Shape shape : Shape.values()) {
            fitted(shape, points, top).ifPresent(fitted::add);
        }
        return fitted.stream()
                .filter(one -> one.peakDose() > 0 && one.peakViscosity() > 0)
                .min(Comparator.comparingDouble(one -> one.fit().correctedAkaike()));
    }

    private static Optional<SaltCurve> fitted(Shape shape, List<SaltPoint> points, SaltPoint top) {
        double range = range(points);
        double width = shape == Shape.SKEWED_BELL ? 0.5 : range / 2;
        List<Double> x = points.stream().map(SaltPoint::dose).toList();
        List<Double> y = points.stream().map(SaltPoint::viscosity).toList();
        double[] start = {top.viscosity(), Math.max(top.dose(), 0.05 * range), width};
        return NonlinearFit.fit(shape::at, x, y, start).map(fit -> judged(shape, fit, points));
    }

    private static double range(List<SaltPoint> points) {
        double least = points.stream().mapToDouble(SaltPoint::dose).min().orElse(0);
        double most = points.stream().mapToDouble(SaltPoint::dose).max().orElse(0);
        return most - least;
    }

    private static SaltCurve judged(Shape shape, NonlinearFit fit, List<SaltPoint> points) {
        double peak = fit.parameters().get(1);
        double half = Student.halfWidth(fit.standardErrors().get(1), fit.degreesOfFreedom());
        List<String> said = new ArrayList<>();
        double most = points.stream().mapToDouble(SaltPoint::dose).max().orElse(0);
        double least = points.stream().mapToDouble(SaltPoint::dose).min().orElse(0);
        if (peak >= most || peak <= least) {
            said.add(String.format(
                    Locale.ROOT,
                    "The peak (%.2f %%) lies outside the readings (%.2f to %.2f %%): it is a guess until a reading beyond"
                            + " it shows less.",
                    peak,
                    least,
                    most));
        }
        if (half > 0.25 * peak) {
            said.add("The readings hardly tell where the peak is: take some more on either side.");
        }
        return new SaltCurve(shape, fit, peak, half, fit.parameters().get(0), said);
    }

    /** Viscosity at a dose [unit of the readings]. */
    public double at(double dose) {
        return shape.at(dose, parameters());
    }

    private double[] parameters() {
        return fit.parameters().stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** The largest dose that is advised: 80 % of the peak's, at the lower end of the peak's interval [mass percent]. */
    public double advisedUpTo() {
        double low = Double.isFinite(peakHalfWidth) ? Math.max(0, peakDose - peakHalfWidth) : 0;
        return SAFE_SHARE * Math.min(peakDose, Math.max(low, 0.5 * peakDose));
    }

    /**
     * The dose for a wanted viscosity on the rising side.
     *
     * @param dose [mass percent]
     * @param halfWidth half the width of its 95 % interval [mass percent]
     */
    public record Dose(double dose, double halfWidth) {}

    /** Empty where the viscosity is not reached below 80 % of the peak's dose, or already there without any. */
    public Optional<Dose> doseFor(double viscosity) {
        double end = advisedUpTo();
        double start = Math.max(0, lowestRising());
        if (!(at(start) < viscosity && viscosity <= at(end))) {
            return Optional.empty();
        }
        double dose = bisected(x -> at(x) - viscosity, start, end);
        return Optional.of(new Dose(dose, doseHalfWidth(dose)));
    }

    /** A parabola is negative far from its peak; the advice begins where it rises through nothing. */
    private double lowestRising() {
        return shape == Shape.PARABOLA ? peakDose - Math.abs(fit.parameters().get(2)) : 0;
    }

    private static double bisected(DoubleUnaryOperator rising, double low, double high) {
        double a = low;
        double b = high;
        for (int round = 0; round < 80; round++) {
            double middle = (a + b) / 2;
            if (rising.applyAsDouble(middle) < 0) {
                a = middle;
            } else {
                b = middle;
            }
        }
        return (a + b) / 2;
    }

    private double doseHalfWidth(double dose) {
        NonlinearFit.Curve curve = shape::at;
        double step = 1e-4 * peakDose;
        double slope = (at(dose + step) - at(dose - step)) / (2 * step);
        double error = fit.standardError(curve.gradient(dose, parameters()));
        return Student.halfWidth(error, fit.degreesOfFreedom()) / Math.abs(slope);
    }
}
