package stillroom.science.dosing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Prescribes a sample titration and its next addition. */
public final class SampleTitration {

    private static final double[] DILUTIONS = {1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01, 0.005};
    /** The expected dose spans at least this many steps of the balance, so that a step is at most 2 % of it. */
    static final double LEAST_STEPS = 50;

    /** Buffering may be a sixth of what is usual and the dose should still be seen well. */
    private static final double USUAL_OVER_WEAK = 4;

    private static final double FIRST_SHARE = 0.05;
    private static final double GROWTH = 8;
    /** The last addition aims a little beyond the target, so that the target lies between readings. */
    private static final double FURTHEST = 1.1;

    private SampleTitration() {}

    /**
     * Sample size, dilution and first addition for a liquid of which only one pH is known.
     *
     * <p>The sample is a twentieth of the bulk, 20 to 100 g; the dilution is the strongest one with which the expected dose
     * is at least 50 balance steps even when the liquid is buffered four times more weakly than expected.
     *
     * @return empty when the corrector cannot bring the liquid to the target
     */
    public static Optional<Prescription> prescribe(
            KnownChemistry chemistry,
            double pH,
            double targetPh,
            Corrector corrector,
            double bulkGrams,
            Instrument with) {
        double sample = sampleGrams(bulkGrams);
        PhReading now = new PhReading(Vessel.SAMPLE, sample, List.of(), pH);
        FittedLiquid expected = FittedLiquid.of(chemistry, List.of(now), targetPh, with);
        Mixture mixture = new Mixture(sample, List.of());
        if (targetPh < pH != corrector.lowersPh()) {
            return Optional.empty();
        }
        Optional<Prescription> last = Optional.empty();
        for (double share : DILUTIONS) {
            Corrector dilution = share == 1 ? corrector : corrector.dilutedTo(share);
            OptionalDouble grams = expected.gramsTo(targetPh, mixture, dilution);
            if (grams.isEmpty()) {
                break;
            }
            double step = with.balanceStepGrams();
            double first = Math.max(Math.rint(FIRST_SHARE * grams.getAsDouble() / step), 1) * step;
            last = Optional.of(new Prescription(sample, share, dilution, first, grams.getAsDouble()));
            if (grams.getAsDouble() >= USUAL_OVER_WEAK * LEAST_STEPS * step) {
                break;
            }
        }
        return last;
    }

    private static double sampleGrams(double bulkGrams) {
        double twentieth = Math.rint(bulkGrams / 20 / 10) * 10;
        return Math.min(Math.max(Math.min(twentieth, 100), 20), bulkGrams / 2);
    }

    /**
     * The next addition to the sample, in addition to what is in it, from the readings so far [g].
     *
     * @param task its readings in one sample so far and the corrector as diluted
     * @param remaining additions that are still to be made, this one included
     * @return empty when the sample is already beyond the target
     */
    public static OptionalDouble nextGrams(DosingTask task, int remaining) {
        PhReading first = task.readings().get(0);
        PhReading last = task.readings().get(task.readings().size() - 1);
        double share = (last.pH() - first.pH()) / (task.targetPh() - first.pH());
        if (share >= 1) {
            return OptionalDouble.empty();
        }
        double aimShare = share + (FURTHEST - share) / remaining;
        double aim = first.pH() + aimShare * (task.targetPh() - first.pH());
        FittedLiquid liquid = FittedLiquid.of(task.chemistry(), task.readings(), aim, task.instrument());
        double step = task.instrument().balanceStepGrams();
        double most = Math.max((GROWTH - 1) * last.addedGrams(), step);
        OptionalDouble grams = liquid.gramsTo(aim, Mixture.of(last), task.corrector());
        double wanted = grams.isPresent() ? Math.min(grams.getAsDouble(), most) : most;
        return OptionalDouble.of(Math.max(Math.rint(wanted / step), 1) * step);
    }
}
