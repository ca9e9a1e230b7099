package stillroom.science.regression;

import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * A curve fitted by nonlinear least squares (Levenberg and Marquardt, then Gauss and Newton).
 *
 * @param parameters in the order of the curve
 * @param standardErrors one per parameter; infinite without degrees of freedom
 * @param errorSquares residual sum of squares
 * @param degreesOfFreedom points less parameters
 * @param covariance unscaled, row after row
 */
public record NonlinearFit(
        List<Double> parameters,
        List<Double> standardErrors,
        double errorSquares,
        int degreesOfFreedom,
        List<Double> covariance) {
    public NonlinearFit {
        parameters = List.copyOf(parameters);
        standardErrors = List.copyOf(standardErrors);
        covariance = List.copyOf(covariance);
    }

    /** A curve of x with parameters. */
    public interface Curve {
        double at(double x, double[] parameters);

        /** Derivatives by the parameters; by differences where a curve has none of its own. */
        default double[] gradient(double x, double[] parameters) {
            double[] gradient = new double[parameters.length];
            for (int k = 0; k < parameters.length; k++) {
                double step = 1e-6 * Math.max(Math.abs(parameters[k]), 1e-8);
                double[] up = parameters.clone();
                double[] down = parameters.clone();
                up[k] += step;
                down[k] -= step;
                gradient[k] = (at(x, up) - at(x, down)) / (up[k] - down[k]);
            }
            return gradient;
        }
    }

    /** Empty where it does not settle. */
    public static Optional<NonlinearFit> fit(Curve curve, List<Double> x, List<Double> y, double[] start) {
        MultivariateJacobianFunction model = point -> {
            double[] parameters = point.toArray();
            double[] values = new double[x.size()];
            double[][] rows = new double[x.size()][];
            for (int i = 0; i < values.length; i++) {
                values[i] = curve.at(x.get(i), parameters);
                rows[i] = curve.gradient(x.get(i), parameters);
            }
            return new Pair<>(
                    new ArrayRealVector(values, false), org.hipparchus.linear.MatrixUtils.createRealMatrix(rows));
        };
        try {
            LeastSquaresOptimizer.Optimum optimum = new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(1e-15)
                    .withParameterRelativeTolerance(1e-14)
                    .withOrthoTolerance(1e-15)
                    .optimize(new LeastSquaresBuilder()
                            .model(model)
                            .start(start)
                            .target(y.stream().mapToDouble(Double::doubleValue).toArray())
                            .maxEvaluations(2000)
                            .maxIterations(1000)
                            .build());
            double[] settled = settled(curve, x, y, optimum.getPoint().toArray());
            return Optional.of(judged(curve, x, y, settled));
        } catch (MathRuntimeException | IllegalArgumentException unsettled) {
            return Optional.empty();
        }
    }

    /** A few steps of Gauss and Newton with our own decomposition, to the last digits; each has to lower the squares. */
    private static double[] settled(Curve curve, List<Double> x, List<Double> y, double[] near) {
        double[] best = near;
        for (int round = 0; round < 8; round++) {
            double[] step = new Decomposition(slopes(curve, x, best), 1e-13).refined(residuals(curve, x, y, best));
            double[] next = best.clone();
            for (int k = 0; k < next.length; k++) {
                next[k] += step[k];
            }
            double before = squares(residuals(curve, x, y, best));
            if (!(squares(residuals(curve, x, y, next)) <= before * (1 + 1e-13))) {
                return best;
            }
            best = next;
        }
        return best;
    }

    private static double[][] slopes(Curve curve, List<Double> x, double[] parameters) {
        return x.stream().map(one -> curve.gradient(one, parameters)).toArray(double[][]::new);
    }

    private static double[] residuals(Curve curve, List<Double> x, List<Double> y, double[] parameters) {
        double[] residuals = new double[x.size()];
        for (int i = 0; i < residuals.length; i++) {
            residuals[i] = y.get(i) - curve.at(x.get(i), parameters);
        }
        return residuals;
    }

    private static double squares(double[] residuals) {
        double sum = 0;
        for (double residual : residuals) {
            sum += residual * residual;
        }
        return sum;
    }

    private static NonlinearFit judged(Curve curve, List<Double> x, List<Double> y, double[] parameters) {
        int n = x.size();
        int p = parameters.length;
        double squares = squares(residuals(curve, x, y, parameters));
        double[] covariance = new Decomposition(slopes(curve, x, parameters), 1e-13).covariance();
        double variance = n > p ? squares / (n - p) : Double.POSITIVE_INFINITY;
        double[] errors = new double[p];
        for (int k = 0; k < p; k++) {
            errors[k] = Math.sqrt(variance * covariance[k * p + k]);
        }
        return new NonlinearFit(
                LinearFit.unmodifiable(parameters),
                LinearFit.unmodifiable(errors),
                squares,
                n - p,
                LinearFit.unmodifiable(covariance));
    }

    /** Residual standard deviation; 0 without degrees of freedom. */
    public double residualDeviation() {
        return degreesOfFreedom == 0 ? 0 : Math.sqrt(errorSquares / degreesOfFreedom);
    }

    /** Akaike's information criterion, corrected for few observations; infinite where there are too few [-]. */
    public double correctedAkaike() {
        int k = parameters.size() + 1;
        int n = degreesOfFreedom + parameters.size();
        return n - k - 1 <= 0
                ? Double.POSITIVE_INFINITY
                : n * Math.log(Math.max(errorSquares, 1e-300) / n) + 2 * k + 2.0 * k * (k + 1) / (n - k - 1);
    }

    /** Standard error of a function of the parameters with this gradient. */
    public double standardError(double[] gradient) {
        int p = gradient.length;
        double sum = 0;
        for (int i = 0; i < p; i++) {
            for (int k = 0; k < p; k++) {
                sum += gradient[i] * gradient[k] * covariance.get(i * p + k);
            }
        }
        return degreesOfFreedom == 0 ? Double.POSITIVE_INFINITY : residualDeviation() * Math.sqrt(Math.max(0, sum));
    }
}
