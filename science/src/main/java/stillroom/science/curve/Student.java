package stillroom.science.curve;

import org.hipparchus.distribution.continuous.TDistribution;

/** Half-widths of 95 % intervals from standard errors. */
final class Student {
    private Student() {}

    static double halfWidth(double standardError, int degreesOfFreedom) {
        return degreesOfFreedom < 1 || !Double.isFinite(standardError)
                ? Double.POSITIVE_INFINITY
                : standardError * new TDistribution(degreesOfFreedom).inverseCumulativeProbability(0.975);
    }
}
