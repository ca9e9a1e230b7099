package stillroom.science.dosing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import stillroom.science.equilibrium.Equilibrium;

/** A liquid whose buffering has been fitted: asks it forwards (pH after a dose) and backwards (dose for a pH). */
final class FittedLiquid {
    private final BufferFit fit;

    private FittedLiquid(BufferFit fit) {
        this.fit = fit;
    }

    /** Fits readings; {@code targetPh} only widens the range in which buffering is modelled. */
    static FittedLiquid of(KnownChemistry chemistry, List<PhReading> readings, double targetPh, Instrument instrument) {
        double low = targetPh;
        double high = targetPh;
        for (PhReading reading : readings) {
            low = Math.min(low, reading.pH());
            high = Math.max(high, reading.pH());
        }
        BufferModel model =
                new BufferModel(chemistry, low, high, readings.get(0).pH());
        return new FittedLiquid(new BufferFit(model, readings, instrument));
    }

    double pH(Mixture mixture) {
        return fit.pH(mixture);
    }

    Dose.State state(Mixture mixture) {
        Equilibrium equilibrium = equilibrium(mixture);
        double half = fit.quantile() * fit.pHDeviation(mixture);
        return new Dose.State(
                equilibrium.pH(),
                equilibrium.pH() - half,
                equilibrium.pH() + half,
                equilibrium.ionicStrengthMolPerKg());
    }

    Equilibrium equilibrium(Mixture mixture) {
        return fit.model().solve(mixture, fit.best());
    }

    /** Grams of corrector that bring the mixture to a pH; empty when an equal mass of it does not [g]. */
    OptionalDouble gramsTo(double pH, Mixture mixture, Corrector corrector) {
        double high = Math.max(mixture.liquidGrams(), 1e-9);
        boolean falling = corrector.lowersPh();
        if (falling != pH(mixture.plus(corrector, high)) < pH) {
            return OptionalDouble.empty();
        }
        double low = 0;
        for (int i = 0; i < 60; i++) {
            double middle = i < 8 ? Math.max(low, high / 10) : (low + high) / 2;
            if (falling == pH(mixture.plus(corrector, middle)) < pH) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return OptionalDouble.of((low + high) / 2);
    }

    /** Readings that no one liquid explains, worst first. */
    List<PhReading> contradictory() {
        return fit.contradictory();
    }

    /** How far the fit misses a reading [pH]. */
    double miss(PhReading reading) {
        return fit.miss(reading);
    }

    double quantile() {
        return fit.quantile();
    }

    /** Standard deviation of ln(grams) at a dose: that of the pH over the slope of the curve [-]. */
    double logGramsDeviation(Mixture mixture, Corrector corrector, double grams) {
        double up = pH(mixture.plus(corrector, grams * 1.001));
        double down = pH(mixture.plus(corrector, grams * 0.999));
        return fit.pHDeviation(mixture.plus(corrector, grams)) / Math.max(Math.abs(up - down) / 0.002, 1e-9);
    }

    /** The fitted titration curve from nothing to a number of grams, with 95 % intervals. */
    List<CurvePoint> curve(Mixture mixture, Corrector corrector, double toGrams, int points) {
        List<CurvePoint> curve = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            double grams = toGrams * i / (points - 1);
            Dose.State state = state(mixture.plus(corrector, grams));
            curve.add(new CurvePoint(grams, state.pH(), state.low(), state.high()));
        }
        return List.copyOf(curve);
    }
}
