package stillroom.science.regression;

import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * A straight line through points by ordinary least squares.
 *
 * @param intercept at x = 0 [unit of y]
 * @param slope [unit of y per unit of x]
 * @param interceptDeviation standard error of the intercept
 * @param slopeDeviation standard error of the slope
 * @param residualDeviation square root of residual sum of squares over degrees of freedom; 0 without any [unit of y]
 * @param degreesOfFreedom points less two
 * @param rSquared share of the variation about the mean that the line explains [-]
 * @param sumOfSquaresX Σ(x - mean)²
 */
public record StraightLine(
        double intercept,
        double slope,
        double interceptDeviation,
        double slopeDeviation,
        double residualDeviation,
        int degreesOfFreedom,
        double rSquared,
        double sumOfSquaresX) {

    /** Fits a line; needs two different x at least. */
    public static StraightLine fit(List<Double> x, List<Double> y) {
        if (x.size() != y.size() || x.size() < 2) {
            throw new IllegalArgumentException(
                    x.size() + " x and " + y.size() + " y: a line needs as many of each, two at least");
        }
        double meanX = mean(x);
        double meanY = mean(y);
        double sxx = products(x, meanX, x, meanX);
        if (!(sxx > 0)) {
            throw new IllegalArgumentException("all x are " + meanX + ": a line needs two different ones");
        }
        double slope = products(x, meanX, y, meanY) / sxx;
        double residual = 0;
        for (int i = 0; i < x.size(); i++) {
            double miss = y.get(i) - meanY - slope * (x.get(i) - meanX);
            residual += miss * miss;
        }
        int freedom = x.size() - 2;
        double s = freedom == 0 ? 0 : Math.sqrt(residual / freedom);
        double syy = products(y, meanY, y, meanY);
        return new StraightLine(
                meanY - slope * meanX,
                slope,
                s * Math.sqrt(1.0 / x.size() + meanX * meanX / sxx),
                s / Math.sqrt(sxx),
                s,
                freedom,
                syy == 0 ? 1 : 1 - residual / syy,
                sxx);
    }

    /** Half-width of the slope's confidence interval from the residuals; needs three points [unit of y per unit of x]. */
    public double slopeHalfWidth(double confidence) {
        if (degreesOfFreedom < 1) {
            throw new IllegalArgumentException("two points leave no residual: an interval needs three");
        }
        return slopeDeviation * new TDistribution(degreesOfFreedom).inverseCumulativeProbability((1 + confidence) / 2);
    }

    private static double mean(List<Double> figures) {
        return figures.stream().mapToDouble(Double::doubleValue).sum() / figures.size();
    }

    private static double products(List<Double> a, double meanA, List<Double> b, double meanB) {
        double sum = 0;
        for (int i = 0; i < a.size(); i++) {
            sum += (a.get(i) - meanA) * (b.get(i) - meanB);
        }
        return sum;
    }
}
