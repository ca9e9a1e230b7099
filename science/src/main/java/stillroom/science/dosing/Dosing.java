package stillroom.science.dosing;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import stillroom.science.dosing.Refusal.Kind;
import stillroom.science.equilibrium.Equilibrium;

/** The next addition to the bulk. */
public final class Dosing {
    /** Part of the lower end of the interval that is poured first: common practice of this program, no source. */
    static final double FIRST_SHARE = 0.7;

    private final DosingTask task;
    private final FittedLiquid liquid;
    private final Mixture bulk;

    private Dosing(DosingTask task) {
        this.task = task;
        this.liquid = FittedLiquid.of(task.chemistry(), task.readings(), task.targetPh(), task.instrument());
        this.bulk = new Mixture(task.bulkGrams(), task.bulkAdditions());
    }

    /** What to pour next, or that nothing is needed, or why no dose can be given. */
    public static DosingAnswer next(DosingTask task) {
        List<Refusal> refusals = TaskCheck.refusals(task);
        return refusals.isEmpty() ? new Dosing(task).answer() : new DosingAnswer.Refused(refusals);
    }

    /** The fitted curve of the bulk with the corrector, to draw: pH at evenly spaced grams; empty when refused. */
    public static List<CurvePoint> curve(DosingTask task, double toGrams, int points) {
        if (!TaskCheck.refusals(task).isEmpty()) {
            return List.of();
        }
        Dosing dosing = new Dosing(task);
        return dosing.liquid.curve(dosing.bulk, task.corrector(), toGrams, points);
    }

    private DosingAnswer answer() {
        List<PhReading> contradictory = liquid.contradictory();
        if (!contradictory.isEmpty()) {
            return contradictory(contradictory.get(0));
        }
        Dose.State now = liquid.state(bulk);
        double way = task.targetPh() - now.pH();
        if (Math.abs(way) + now.high() - now.pH() <= task.halfBand() && lastReadingAgrees()) {
            return new DosingAnswer.InBand(now.pH(), now.low(), now.high());
        }
        if (way < 0 != task.corrector().lowersPh()) {
            return wrongCorrector(now);
        }
        OptionalDouble grams = liquid.gramsTo(task.targetPh(), bulk, task.corrector());
        return grams.isPresent() ? propose(now, grams.getAsDouble()) : outOfReach(now);
    }

    /** A fit that calls the bulk right against its own last reading is not believed. */
    private boolean lastReadingAgrees() {
        PhReading last = task.readings().get(task.readings().size() - 1);
        double allowed = task.halfBand() - task.instrument().repeatability();
        return !last.additions().equals(task.bulkAdditions())
                || last.vessel() != Vessel.BULK
                || Math.abs(last.pH() - task.targetPh()) <= allowed;
    }

    private DosingAnswer propose(Dose.State now, double gramsToTarget) {
        double spread = Math.exp(
                liquid.quantile() * Math.min(liquid.logGramsDeviation(bulk, task.corrector(), gramsToTarget), 2));
        double low = gramsToTarget / spread;
        Dose.State arrived = liquid.state(bulk.plus(task.corrector(), gramsToTarget));
        Dose.Stage stage = stage(arrived);
        double grams = rounded(
                switch (stage) {
                    case FIRST_PART -> FIRST_SHARE * low;
                    case REST -> gramsToTarget;
                    case HALF_STEP -> gramsToTarget / 2;
                },
                stage);
        if (grams == 0) {
            return belowBalance(gramsToTarget);
        }
        return new DosingAnswer.Proposed(dose(now, grams, stage, gramsToTarget, low, gramsToTarget * spread));
    }

    private Dose.Stage stage(Dose.State arrived) {
        if (task.instrument().strip()) {
            return Dose.Stage.HALF_STEP;
        }
        boolean poured = task.bulkAdditions().stream().anyMatch(addition -> addition.grams() > 0);
        boolean sure = arrived.high() - arrived.pH() <= task.halfBand();
        return poured && sure ? Dose.Stage.REST : Dose.Stage.FIRST_PART;
    }

    private double rounded(double grams, Dose.Stage stage) {
        double steps = grams / task.instrument().balanceStepGrams();
        return (stage == Dose.Stage.REST ? Math.rint(steps) : Math.floor(steps))
                * task.instrument().balanceStepGrams();
    }

    private Dose dose(Dose.State now, double grams, Dose.Stage stage, double all, double low, double high) {
        Mixture dosed = bulk.plus(task.corrector(), grams);
        Equilibrium after = liquid.equilibrium(dosed);
        double total = bulk.liquidGrams()
                + grams
                + task.bulkAdditions().stream().mapToDouble(Addition::grams).sum();
        double waterPerLiquid = task.chemistry().waterMassFraction();
        return new Dose(
                grams,
                stage,
                all,
                low,
                high,
                100 * grams / total,
                now,
                liquid.state(dosed),
                liquid.equilibrium(bulk).bufferCapacityMolPerKg() * waterPerLiquid,
                after.exceeded(),
                Caution.of(task.corrector()));
    }

    private DosingAnswer contradictory(PhReading worst) {
        return refused(
                Kind.CONTRADICTORY_READINGS,
                "the readings contradict each other: pH %.2f of the %s with %s g added lies %.2f from what all of them make of "
                        + "one liquid, more than noise and weighing explain: strike what is wrong, or read again",
                worst.pH(),
                worst.vessel() == Vessel.SAMPLE ? "sample" : "bulk",
                Math.round(1e4 * worst.addedGrams()) / 1e4,
                liquid.miss(worst));
    }

    private DosingAnswer wrongCorrector(Dose.State now) {
        return refused(
                Kind.WRONG_CORRECTOR,
                "from pH %.2f to %.2f takes %s, but %s is %s",
                now.pH(),
                task.targetPh(),
                task.corrector().lowersPh() ? "a base" : "an acid",
                task.corrector().name(),
                task.corrector().lowersPh() ? "an acid" : "a base");
    }

    private DosingAnswer outOfReach(Dose.State now) {
        return refused(
                Kind.OUT_OF_REACH,
                "from pH %.2f, %s does not reach %.2f even in equal mass: take a stronger one",
                now.pH(),
                task.corrector().name(),
                task.targetPh());
    }

    private DosingAnswer belowBalance(double grams) {
        return refused(
                Kind.BELOW_BALANCE,
                "%.4f g are missing, less than the balance step of %s g allows to pour: take a weighed dilution",
                grams,
                task.instrument().balanceStepGrams());
    }

    private static DosingAnswer refused(Kind kind, String format, Object... figures) {
        return new DosingAnswer.Refused(List.of(new Refusal(kind, String.format(Locale.ROOT, format, figures))));
    }
}
