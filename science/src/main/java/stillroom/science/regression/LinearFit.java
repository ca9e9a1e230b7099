package stillroom.science.regression;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.hipparchus.distribution.continuous.FDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * A linear model fitted by least squares, with what judges it. Sums of squares are about the mean, also where the model has no
 * constant of its own but contains one, as Scheffé's do. Made by {@link LeastSquares}.
 *
 * @param coefficients in the order of the regressors
 * @param fitted one per observation [unit of the response]
 * @param residuals response less fitted [unit of the response]
 * @param leverages share of each observation in its own fitted value, 0..1
 * @param errorSquares residual sum of squares
 * @param totalSquares sum of squares about the mean
 * @param covariance unscaled covariance (X'X)⁻¹, row after row
 * @param pure error from repeats, for the lack of fit
 */
public record LinearFit(
        List<Coefficient> coefficients,
        List<Double> fitted,
        List<Double> residuals,
        List<Double> leverages,
        double errorSquares,
        double totalSquares,
        List<Double> covariance,
        PureError pure) {
    /** Least scatter that is taken for one [part of the largest fitted value]. */
    private static final double ROUNDING = 1e-9;

    public LinearFit {
        coefficients = List.copyOf(coefficients);
        fitted = List.copyOf(fitted);
        residuals = List.copyOf(residuals);
        leverages = List.copyOf(leverages);
        covariance = List.copyOf(covariance);
    }

    /**
     * @param estimate value
     * @param standardError its standard error; NaN never, infinite without degrees of freedom
     * @param t estimate over standard error
     * @param p two-sided probability of so large a t by chance
     */
    public record Coefficient(double estimate, double standardError, double t, double p) {}

    /**
     * @param squares sum of squares of repeats about their means
     * @param degreesOfFreedom observations less different settings
     */
    public record PureError(double squares, int degreesOfFreedom) {}

    /** A line of the analysis of variance; probability of so large an F by chance. */
    public record Variance(double squares, int degreesOfFreedom, double f, double p) {
        public double meanSquare() {
            return degreesOfFreedom == 0 ? 0 : squares / degreesOfFreedom;
        }
    }

    public int observations() {
        return fitted.size();
    }

    public int errorDegrees() {
        return fitted.size() - coefficients.size();
    }

    /**
     * Whether the residuals are no more than the rounding of the reckoning: nothing that is read scatters by less than 1e-9 of
     * itself, so what is left then tells nothing of outliers or of the model's form.
     */
    public boolean exact() {
        return errorDegrees() > 0 && residualDeviation() <= rounding();
    }

    private double rounding() {
        return ROUNDING * fitted.stream().mapToDouble(Math::abs).max().orElse(0);
    }

    /** Residual standard deviation; 0 without degrees of freedom [unit of the response]. */
    public double residualDeviation() {
        return errorDegrees() == 0 ? 0 : Math.sqrt(errorSquares / errorDegrees());
    }

    /** Share of the variation about the mean that the model explains [-]. */
    public double rSquared() {
        return totalSquares == 0 ? 0 : 1 - errorSquares / totalSquares;
    }

    /** The same, per degree of freedom [-]. */
    public double adjustedRSquared() {
        return totalSquares == 0 || errorDegrees() == 0
                ? 0
                : 1 - (errorSquares / errorDegrees()) / (totalSquares / (observations() - 1));
    }

    /** Sum of squares of what each observation misses when it is left out; infinite if one decides a coefficient alone. */
    public double press() {
        double sum = 0;
        for (int i = 0; i < residuals.size(); i++) {
            double rest = 1 - leverages.get(i);
            if (rest < 1e-10) {
                return Double.POSITIVE_INFINITY;
            }
            sum += residuals.get(i) * residuals.get(i) / (rest * rest);
        }
        return sum;
    }

    /** R² of predictions; may well be negative, and is not clipped [-]. */
    public double predictedRSquared() {
        return totalSquares == 0 ? 0 : 1 - press() / totalSquares;
    }

    public Variance regression() {
        return against(totalSquares - errorSquares, coefficients.size() - 1, errorSquares, errorDegrees());
    }

    /** What the model misses beyond the scatter of repeats. */
    public Variance lackOfFit() {
        return against(
                errorSquares - pure.squares(),
                errorDegrees() - pure.degreesOfFreedom(),
                pure.squares(),
                pure.degreesOfFreedom());
    }

    /** What a larger model explains more than this one, tested against the larger one's error. */
    public Variance improvement(LinearFit larger) {
        return against(
                errorSquares - larger.errorSquares,
                errorDegrees() - larger.errorDegrees(),
                larger.errorSquares,
                larger.errorDegrees());
    }

    private static Variance against(double squares, int degrees, double errorSquares, int errorDegrees) {
        if (degrees <= 0 || errorDegrees <= 0 || errorSquares <= 0) {
            return new Variance(Math.max(0, squares), Math.max(0, degrees), 0, 1);
        }
        double f = Math.max(0, squares / degrees / (errorSquares / errorDegrees));
        return new Variance(squares, degrees, f, 1 - new FDistribution(degrees, errorDegrees).cumulativeProbability(f));
    }

    /** Akaike's information criterion, corrected for few observations; infinite where there are too few [-]. */
    public double correctedAkaike() {
        int n = observations();
        int k = coefficients.size() + 1;
        return n - k - 1 <= 0 || errorSquares <= 0
                ? Double.POSITIVE_INFINITY
                : n * Math.log(errorSquares / n) + 2 * k + 2.0 * k * (k + 1) / (n - k - 1);
    }

    /** Residuals over their own standard error without the observation itself: beyond about 3.5 an outlier; 0 if undefined. */
    public List<Double> studentisedResiduals() {
        List<Double> studentised = new ArrayList<>();
        int rest = errorDegrees() - 1;
        for (int i = 0; i < residuals.size(); i++) {
            double e = residuals.get(i);
            double free = 1 - leverages.get(i);
            double others = errorSquares - e * e / Math.max(free, 1e-12);
            studentised.add(
                    exact() || rest <= 0 || free < 1e-10 || others <= 1e-24 * errorSquares || others <= 0
                            ? 0
                            : e / Math.sqrt(free * others / rest));
        }
        return studentised;
    }

    /** Studentised residual beyond which one of so many observations is an outlier at 5 % (Bonferroni). */
    public double outlierLimit() {
        int rest = errorDegrees() - 1;
        return rest <= 0
                ? Double.POSITIVE_INFINITY
                : new TDistribution(rest).inverseCumulativeProbability(1 - 0.05 / (2 * observations()));
    }

    /** Estimate of the mean response at a setting [unit of the response]. */
    public double at(double[] regressors) {
        double sum = 0;
        for (int i = 0; i < regressors.length; i++) {
            sum += regressors[i] * coefficients.get(i).estimate();
        }
        return sum;
    }

    /** f'(X'X)⁻¹f: variance of the mean response at a setting in units of the residual variance [-]. */
    public double variance(double[] regressors) {
        int p = regressors.length;
        double sum = 0;
        for (int i = 0; i < p; i++) {
            for (int k = 0; k < p; k++) {
                sum += regressors[i] * regressors[k] * covariance.get(i * p + k);
            }
        }
        return sum;
    }

    /** Half the width of the 95 % interval of the mean response; infinite without degrees of freedom. */
    public double meanHalfWidth(double[] regressors) {
        return student() * residualDeviation() * Math.sqrt(variance(regressors));
    }

    /** Half the width of the 95 % interval of one further observation; infinite without degrees of freedom. */
    public double singleHalfWidth(double[] regressors) {
        return student() * residualDeviation() * Math.sqrt(1 + variance(regressors));
    }

    private double student() {
        return errorDegrees() == 0
                ? Double.POSITIVE_INFINITY
                : new TDistribution(errorDegrees()).inverseCumulativeProbability(0.975);
    }

    static List<Double> unmodifiable(double[] figures) {
        List<Double> list = new ArrayList<>(figures.length);
        for (double figure : figures) {
            list.add(figure);
        }
        return Collections.unmodifiableList(list);
    }
}
