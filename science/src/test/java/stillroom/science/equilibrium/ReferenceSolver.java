package stillroom.science.equilibrium;

import java.util.ArrayList;
import java.util.List;

/**
 * The same model solved the slow, plain way, sharing no code with the engine: bisection in pH inside bisection in ionic
 * strength, each form's amount computed with powers of ten.
 */
final class ReferenceSolver {
    private final Solution solution;
    private final List<double[]> pKas = new ArrayList<>();
    private final double a;
    private final double pKw;

    ReferenceSolver(Solution solution) {
        this.solution = solution;
        double t = solution.celsius();
        for (Component c : solution.components()) {
            pKas.add(constants(c.system(), t));
        }
        pKw = shifted(13.995, 56.38, -188.9, t);
        double eps = 87.740 - 0.40008 * t + 9.398e-4 * t * t - 1.410e-6 * t * t * t;
        double eps25 = 87.740 - 0.40008 * 25 + 9.398e-4 * 625 - 1.410e-6 * 15625;
        a = 0.509 * Math.sqrt(density(t) / density(25)) * Math.pow(eps25 * 298.15 / (eps * (t + 273.15)), 1.5);
    }

    private static double[] constants(AcidBase system, double t) {
        return system.steps().stream()
                .mapToDouble(d -> shifted(d.pKa(), d.enthalpyKJPerMol(), d.heatCapacityJPerMolK(), t))
                .toArray();
    }

    private static double shifted(double pK, double kJ, double cp, double t) {
        double kelvin = t + 273.15;
        double gibbs25 = pK * 8.31446261815324 * Math.log(10);
        double shift = (1000 * kJ - 298.15 * cp) * (1 / kelvin - 1 / 298.15) - cp * Math.log(kelvin / 298.15);
        return (gibbs25 + shift) / (8.31446261815324 * Math.log(10));
    }

    private static double density(double t) {
        return (999.83952
                        + 16.945176 * t
                        - 7.9870401e-3 * Math.pow(t, 2)
                        - 46.170461e-6 * Math.pow(t, 3)
                        + 105.56302e-9 * Math.pow(t, 4)
                        - 280.54253e-12 * Math.pow(t, 5))
                / (1 + 16.879850e-3 * t);
    }

    double pH() {
        double low = 0;
        double high = 2;
        while (high - low > 1e-14) {
            double middle = (low + high) / 2;
            if (sums(pHAt(middle), middle)[1] > middle) {
                low = middle;
            } else {
                high = middle;
            }
            if (middle == low && middle == high) {
                break;
            }
        }
        return pHAt((low + high) / 2);
    }

    private double pHAt(double strength) {
        double low = -2;
        double high = 17;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (sums(middle, strength)[0] > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** Charge and ionic strength. */
    private double[] sums(double pH, double strength) {
        double root = Math.sqrt(strength);
        double davies = a * (root / (1 + root) - 0.3 * strength);
        double h = Math.pow(10, -pH + davies);
        double oh = Math.pow(10, pH - pKw + davies);
        double strong = 0;
        double twice = h + oh;
        for (StrongIon ion : solution.ions()) {
            strong += ion.charge() * ion.molPerKg();
            twice += ion.charge() * ion.charge() * ion.molPerKg();
        }
        double charge = strong + h - oh;
        for (int c = 0; c < pKas.size(); c++) {
            Component component = solution.components().get(c);
            double[] relative = relative(component.system().chargeFullyProtonated(), pKas.get(c), pH, davies);
            double sum = 0;
            for (double r : relative) {
                sum += r;
            }
            for (int j = 0; j < relative.length; j++) {
                int z = component.system().chargeFullyProtonated() - j;
                charge += z * component.molPerKg() * relative[j] / sum;
                twice += z * z * component.molPerKg() * relative[j] / sum;
            }
        }
        return new double[] {charge, twice / 2};
    }

    private static double[] relative(int top, double[] pKas, double pH, double davies) {
        double[] logs = new double[pKas.length + 1];
        double sum = 0;
        for (int j = 0; j <= pKas.length; j++) {
            sum += j == 0 ? 0 : pH - pKas[j - 1];
            logs[j] = Math.pow(10, sum + davies * (top - j) * (top - j));
        }
        return logs;
    }
}
