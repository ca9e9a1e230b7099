package stillroom.science.regression;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Linear least squares by Householder's QR decomposition of columns scaled to length one, followed by two refinements of the
 * solution with residuals summed in twice the working precision.
 */
public final class LeastSquares {
    private static final double DEPENDENT = 1e-11;

    private LeastSquares() {}

    /** @throws IllegalArgumentException with a sentence, if there are fewer observations than coefficients or the columns depend on each other */
    public static LinearFit fit(List<Observation> observations) {
        int n = observations.size();
        int p = n == 0 ? 0 : observations.get(0).regressors().size();
        if (n < p || p == 0) {
            throw new IllegalArgumentException(n + " observations cannot fit " + p + " coefficients");
        }
        double[][] x = new double[n][p];
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            y[i] = observations.get(i).response();
            for (int k = 0; k < p; k++) {
                x[i][k] = observations.get(i).regressors().get(k);
            }
        }
        Decomposition decomposition = new Decomposition(x, DEPENDENT);
        double[] b = decomposition.refined(y);
        return judged(observations, decomposition, b, Decomposition.residuals(x, b, y));
    }

    private static LinearFit judged(
            List<Observation> observations, Decomposition decomposition, double[] b, double[] residuals) {
        int n = observations.size();
        int p = b.length;
        double errorSquares = squares(residuals);
        double s = n == p ? Double.NaN : Math.sqrt(errorSquares / (n - p));
        double[] covariance = decomposition.covariance();
        List<LinearFit.Coefficient> coefficients = new ArrayList<>();
        for (int k = 0; k < p; k++) {
            coefficients.add(coefficient(b[k], s * Math.sqrt(covariance[k * p + k]), n - p));
        }
        List<Double> fitted = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            fitted.add(observations.get(i).response() - residuals[i]);
        }
        return new LinearFit(
                coefficients,
                fitted,
                LinearFit.unmodifiable(residuals),
                LinearFit.unmodifiable(decomposition.leverages()),
                errorSquares,
                totalSquares(observations),
                LinearFit.unmodifiable(covariance),
                pure(observations));
    }

    private static LinearFit.Coefficient coefficient(double estimate, double error, int degrees) {
        if (degrees == 0 || !(error > 0)) {
            return new LinearFit.Coefficient(estimate, degrees == 0 ? Double.POSITIVE_INFINITY : 0, 0, 1);
        }
        double t = estimate / error;
        double p = 2 * new TDistribution(degrees).cumulativeProbability(-Math.abs(t));
        return new LinearFit.Coefficient(estimate, error, t, p);
    }

    private static double squares(double[] residuals) {
        double sum = 0;
        for (double residual : residuals) {
            sum += residual * residual;
        }
        return sum;
    }

    private static double totalSquares(List<Observation> observations) {
        double mean = observations.stream().mapToDouble(Observation::response).sum() / observations.size();
        return observations.stream()
                .mapToDouble(one -> (one.response() - mean) * (one.response() - mean))
                .sum();
    }

    private static LinearFit.PureError pure(List<Observation> observations) {
        Map<Integer, List<Observation>> groups = new HashMap<>();
        observations.forEach(one ->
                groups.computeIfAbsent(one.group(), any -> new ArrayList<>()).add(one));
        double squares =
                groups.values().stream().mapToDouble(LeastSquares::totalSquares).sum();
        return new LinearFit.PureError(squares, observations.size() - groups.size());
    }
}
