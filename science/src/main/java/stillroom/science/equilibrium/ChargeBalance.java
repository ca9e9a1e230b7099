package stillroom.science.equilibrium;

import static stillroom.science.equilibrium.WaterModel.LN_10;

import java.util.List;

/**
 * The sums over all species at a trial point, with their derivatives; a scratch pad used by one solve in one thread.
 *
 * <p>The trial point is x = ln a(H+) and s = √I. With L = ln g(1), a form of charge z has the relative amount
 * K1...Kj / a(H+)^j / g(z), g(z) = exp(L z²); so d ln m/dx = z - mean(z) and d ln m/dL = -(z² - mean(z²)) for a
 * component of fixed total. Positive and negative charge are summed apart, because ln(positive/negative) is much
 * closer to a straight line in x than their difference.
 */
final class ChargeBalance {
    private static final double FROZEN_ROOT = Math.sqrt(WaterModel.FROZEN_ABOVE);
    private static final int WIDEST = 2 * AcidBase.MOST_STEPS + 1;

    private final int[] topCharge;
    private final int[] steps;
    private final double[] total;
    private final double[] constants;
    private final int gasIndex;
    private final double slope;
    private final double davies;
    private final double ionProduct;
    private final double[] gammaStep = new double[WIDEST];
    private int highestCharge = 1;
    private int lowestCharge = -1;
    private double strongCharge;
    private double strongTwiceIonic;

    double positive;
    double positiveX;
    double positiveS;
    double negative;
    double negativeX;
    double negativeS;
    double ionic;
    double ionicX;
    double ionicS;
    /** Lower and upper end of x: the charge of each component lies between its extremes. */
    double lowestX;

    double highestX;

    ChargeBalance(Solution solution, WaterModel model) {
        List<Component> components = solution.components();
        int count = components.size() + (solution.air().isPresent() ? 1 : 0);
        topCharge = new int[count];
        steps = new int[count];
        total = new double[count];
        constants = new double[numberOfSteps(solution)];
        gasIndex = solution.air().isPresent() ? count - 1 : -1;
        slope = model.debyeHueckel(solution.celsius()) * LN_10;
        davies = model.daviesCoefficient();
        ionProduct = Math.exp(-LN_10 * model.ionProduct().pKaAt(solution.celsius()));
        int used = 0;
        for (int i = 0; i < components.size(); i++) {
            Component component = components.get(i);
            used = enter(i, component.system(), component.molPerKg(), solution.celsius(), used);
        }
        if (gasIndex >= 0) {
            DissolvedGas gas = solution.air().get();
            enter(gasIndex, gas.acid(), gas.neutralMolPerKg(solution.celsius()), solution.celsius(), used);
        }
        for (StrongIon ion : solution.ions()) {
            strongCharge += ion.charge() * ion.molPerKg();
            strongTwiceIonic += ion.charge() * ion.charge() * ion.molPerKg();
        }
        bracket();
    }

    private static int numberOfSteps(Solution solution) {
        int sum = 0;
        for (Component component : solution.components()) {
            sum += component.system().steps().size();
        }
        return solution.air().isPresent()
                ? sum + solution.air().get().acid().steps().size()
                : sum;
    }

    private int enter(int index, AcidBase system, double molPerKg, double celsius, int used) {
        topCharge[index] = system.chargeFullyProtonated();
        steps[index] = system.steps().size();
        total[index] = molPerKg;
        highestCharge = Math.max(highestCharge, topCharge[index]);
        lowestCharge = Math.min(lowestCharge, topCharge[index] - steps[index]);
        for (int j = 0; j < steps[index]; j++) {
            constants[used + j] = Math.exp(-LN_10 * system.steps().get(j).pKaAt(celsius));
        }
        return used + steps[index];
    }

    /** Hydrogen minus hydroxide ions lies between minus the largest and minus the smallest charge of all the rest. */
    private void bracket() {
        double most = strongCharge;
        double least = strongCharge;
        for (int i = 0; i < total.length; i++) {
            most += i == gasIndex ? 0 : total[i] * topCharge[i];
            // An open gas can bring any negative charge; in acid so strong that it matters it brings next to none.
            least += i == gasIndex ? -1 : total[i] * (topCharge[i] - steps[i]);
        }
        // 0.4 in the logarithm is more than any activity coefficient of H+ below the freezing point of the model.
        lowestX = hydrogenLog(-most) - 0.4;
        highestX = hydrogenLog(-least) + 0.4;
    }

    private double hydrogenLog(double excess) {
        double root = Math.sqrt(excess * excess + 4 * ionProduct);
        return excess > 0 ? Math.log((excess + root) / 2) : Math.log(2 * ionProduct / (root - excess));
    }

    double strongIonic() {
        return strongTwiceIonic / 2;
    }

    private double logGamma(double s) {
        double root = Math.min(s, FROZEN_ROOT);
        return -slope * (root / (1 + root) - davies * root * root);
    }

    private double logGammaSlope(double s) {
        return s > FROZEN_ROOT ? 0 : -slope * (1 / ((1 + s) * (1 + s)) - 2 * davies * s);
    }

    /** Factor g(z)/g(z-1) = exp(L (2z - 1)) for every step down from charge z that occurs. */
    private void prepareGamma(double logGamma) {
        double gamma = Math.exp(logGamma);
        double square = gamma * gamma;
        double up = gamma;
        for (int z = 1; z <= highestCharge; z++) {
            gammaStep[z + AcidBase.MOST_STEPS] = up;
            up *= square;
        }
        double down = 1 / gamma;
        double inverseSquare = down * down;
        for (int z = 0; z > lowestCharge; z--) {
            gammaStep[z + AcidBase.MOST_STEPS] = down;
            down *= inverseSquare;
        }
    }

    /** Fills all sums and derivatives at a trial point. */
    void evaluate(double x, double s) {
        double logGamma = logGamma(s);
        prepareGamma(logGamma);
        double hydrogen = Math.exp(x);
        double perHydrogen = 1 / hydrogen;
        double gamma = gammaStep[1 + AcidBase.MOST_STEPS];
        double h = hydrogen / gamma;
        double oh = ionProduct * perHydrogen / gamma;
        double p = h + Math.max(strongCharge, 0);
        double pX = h;
        double pL = -h;
        double n = oh - Math.min(strongCharge, 0);
        double nX = -oh;
        double nL = -oh;
        double i = strongTwiceIonic + h + oh;
        double iX = h - oh;
        double iL = -h - oh;
        int used = 0;
        for (int c = 0; c < total.length; c++) {
            int count = steps[c];
            int z = topCharge[c];
            double weight = 1;
            double sum = 0;
            double p1 = 0;
            double p2 = 0;
            double p3 = 0;
            double n1 = 0;
            double n2 = 0;
            double n3 = 0;
            double q4 = 0;
            for (int j = 0; ; j++) {
                sum += weight;
                double zw = z * weight;
                double zzw = z * zw;
                if (z > 0) {
                    p1 += zw;
                    p2 += zzw;
                    p3 += z * zzw;
                } else {
                    n1 -= zw;
                    n2 += zzw;
                    n3 -= z * zzw;
                }
                q4 += z * z * zzw;
                if (j == count) {
                    break;
                }
                weight *= constants[used++] * perHydrogen * gammaStep[z + AcidBase.MOST_STEPS];
                z--;
            }
            boolean closed = c != gasIndex;
            double scale = closed ? total[c] / sum : total[c];
            double meanZ = closed ? (p1 - n1) / sum : 0;
            double meanZz = closed ? (p2 + n2) / sum : 0;
            p += scale * p1;
            pX += scale * (p2 - meanZ * p1);
            pL += scale * (meanZz * p1 - p3);
            n += scale * n1;
            nX -= scale * (n2 + meanZ * n1);
            nL += scale * (meanZz * n1 - n3);
            i += scale * (p2 + n2);
            iX += scale * (p3 - n3 - meanZ * (p2 + n2));
            iL += scale * (meanZz * (p2 + n2) - q4);
        }
        double perS = logGammaSlope(s);
        positive = p;
        positiveX = pX;
        positiveS = pL * perS;
        negative = n;
        negativeX = nX;
        negativeS = nL * perS;
        ionic = i / 2;
        ionicX = iX / 2;
        ionicS = iL * perS / 2;
    }

    /** Amounts of all forms: H+, OH-, then each component from its fully protonated form down, the gas last [mol/kg]. */
    double[] amounts(double x, double s) {
        prepareGamma(logGamma(s));
        double perHydrogen = Math.exp(-x);
        double gamma = gammaStep[1 + AcidBase.MOST_STEPS];
        double[] amounts = new double[2 + constants.length + total.length];
        amounts[0] = Math.exp(x) / gamma;
        amounts[1] = ionProduct * perHydrogen / gamma;
        int at = 2;
        int used = 0;
        for (int c = 0; c < total.length; c++) {
            double weight = 1;
            double sum = 1;
            amounts[at] = 1;
            for (int j = 0; j < steps[c]; j++) {
                weight *= constants[used++] * perHydrogen * gammaStep[topCharge[c] - j + AcidBase.MOST_STEPS];
                amounts[at + j + 1] = weight;
                sum += weight;
            }
            double scale = c == gasIndex ? total[c] : total[c] / sum;
            for (int j = 0; j <= steps[c]; j++) {
                amounts[at++] *= scale;
            }
        }
        return amounts;
    }
}
