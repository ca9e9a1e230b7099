package stillroom.science.dosing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/** A maker at an imperfect bench: titrates a sample as told, doses the bulk as told, reads and weighs with errors. */
final class BenchSimulation {
    static final double BAND = 0.1;
    private static final double STEP = 0.01;
    private static final int MOST_POURS = 6;

    private final HiddenLiquid liquid;
    private final SplittableRandom random;
    private final double noise;
    private final double bias;
    private final Instrument instrument;
    private final List<PhReading> readings = new ArrayList<>();

    /** Outcome of one liquid. */
    record Outcome(boolean landed, boolean firstOvershot, int pours, boolean covered, int refusals) {}

    /** Whether the maker adds even portions of a size of his own instead of what the program prescribes. */
    private boolean evenPortions;

    BenchSimulation withEvenPortions() {
        evenPortions = true;
        return this;
    }

    BenchSimulation(HiddenLiquid liquid, SplittableRandom random, double noise, double bias) {
        this.liquid = liquid;
        this.random = random;
        this.noise = noise;
        this.bias = bias;
        this.instrument = Instrument.meter(noise, STEP);
    }

    Outcome run(int additions) {
        double bulk = Math.rint(1000 * Math.pow(10, random.nextDouble(-0.3, 0.7)));
        KnownChemistry chemistry = KnownChemistry.none(liquid.water);
        double first = read(bulk, List.of());
        Prescription prescription = SampleTitration.prescribe(
                        chemistry, first, liquid.targetPh, liquid.corrector, bulk, instrument)
                .orElseThrow();
        titrate(chemistry, prescription, bulk, additions);
        return dose(chemistry, bulk - prescription.sampleGrams());
    }

    private void titrate(KnownChemistry chemistry, Prescription prescription, double bulk, int additions) {
        double sample = prescription.sampleGrams();
        Corrector dilution = prescription.dilution();
        readings.add(new PhReading(Vessel.SAMPLE, sample, List.of(), read(sample, List.of())));
        double typed = 0;
        double poured = 0;
        double portion = evenPortions ? trueWay(sample, dilution) * random.nextDouble(0.6, 1.6) / additions : 0;
        for (int i = 0; i < additions; i++) {
            OptionalDouble next = evenPortions
                    ? OptionalDouble.of(Math.max(Math.rint(portion / STEP), 1) * STEP)
                    : i == 0
                            ? OptionalDouble.of(prescription.firstGrams())
                            : SampleTitration.nextGrams(task(chemistry, bulk, List.of(), dilution), additions - i);
            if (next.isEmpty()) {
                return;
            }
            typed += next.getAsDouble();
            poured += weighed(next.getAsDouble());
            note(new PhReading(Vessel.SAMPLE, sample, List.of(new Addition(dilution, typed)), 0), poured);
            while (movedAgainstTheCorrector()) {
                PhReading doubted = readings.remove(readings.size() - 1);
                note(doubted, poured);
            }
        }
    }

    private double trueWay(double sample, Corrector dilution) {
        double low = 0;
        double high = sample;
        for (int i = 0; i < 50; i++) {
            double middle = (low + high) / 2;
            if (beyond(liquid.pH(sample, List.of(new Addition(dilution, middle)))) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private void note(PhReading typed, double reallyPoured) {
        Corrector corrector = typed.additions().get(0).corrector();
        double pH = read(typed.liquidGrams(), List.of(new Addition(corrector, reallyPoured)));
        readings.add(new PhReading(typed.vessel(), typed.liquidGrams(), typed.additions(), pH));
    }

    /** What the program refuses to fit; the maker then stirs, waits and reads again. */
    private boolean movedAgainstTheCorrector() {
        double moved = readings.get(readings.size() - 1).pH()
                - readings.get(readings.size() - 2).pH();
        return moved * Math.signum(liquid.targetPh - liquid.startPh) < -3 * noise;
    }

    private Outcome dose(KnownChemistry chemistry, double bulk) {
        List<Addition> typed = new ArrayList<>();
        List<Addition> poured = new ArrayList<>();
        boolean overshot = false;
        boolean covered = true;
        int refusals = 0;
        Corrector corrector = liquid.corrector;
        while (typed.size() < MOST_POURS && refusals < 5) {
            DosingAnswer answer = Dosing.next(task(chemistry, bulk, typed, corrector));
            if (answer instanceof DosingAnswer.InBand) {
                break;
            }
            if (answer instanceof DosingAnswer.Refused refused) {
                refusals++;
                corrector = heed(refused, corrector, bulk, poured);
                continue;
            }
            Dose dose = ((DosingAnswer.Proposed) answer).dose();
            double grams = dose.grams();
            covered = typed.isEmpty() ? holds(dose, bulk) : covered;
            typed.add(new Addition(corrector, grams));
            poured.add(new Addition(corrector, weighed(grams)));
            overshot |= typed.size() == 1 && beyond(liquid.pH(bulk, poured)) > BAND;
            readings.add(new PhReading(Vessel.BULK, bulk, typed, read(bulk, poured)));
        }
        double missed = Math.abs(liquid.pH(bulk, poured) - liquid.targetPh);
        return new Outcome(missed <= BAND, overshot, typed.size(), covered, refusals);
    }

    /** Takes the opposite corrector when told that too much was poured, reads again when told that a reading is odd. */
    private Corrector heed(DosingAnswer.Refused refused, Corrector corrector, double bulk, List<Addition> poured) {
        Refusal.Kind kind = refused.reasons().get(0).kind();
        if (kind == Refusal.Kind.WRONG_CORRECTOR) {
            return corrector.lowersPh() ? HiddenLiquid.SODA_10 : HiddenLiquid.CITRIC_50;
        }
        if (kind == Refusal.Kind.WRONG_WAY) {
            PhReading odd = readings.remove(readings.size() - 1);
            readings.add(new PhReading(Vessel.BULK, bulk, odd.additions(), read(bulk, poured)));
        }
        return corrector;
    }

    /** Whether the first interval holds the true dose: the ends lie on either side of the target. */
    private boolean holds(Dose dose, double bulk) {
        double low = liquid.pH(bulk, List.of(new Addition(liquid.corrector, dose.lowGrams())));
        double high = liquid.pH(bulk, List.of(new Addition(liquid.corrector, dose.highGrams())));
        return beyond(low) <= 0 && beyond(high) >= 0;
    }

    private double beyond(double pH) {
        return (pH - liquid.targetPh) * Math.signum(liquid.targetPh - liquid.startPh);
    }

    private double weighed(double grams) {
        return Math.max(grams + STEP * (random.nextDouble() - 0.5), 0);
    }

    private double read(double grams, List<Addition> additions) {
        double gaussian =
                Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
        return Math.rint(100 * (liquid.pH(grams, additions) + bias + noise * gaussian)) / 100;
    }

    private DosingTask task(KnownChemistry chemistry, double bulk, List<Addition> poured, Corrector corrector) {
        return new DosingTask(chemistry, readings, bulk, poured, corrector, liquid.targetPh, BAND, instrument);
    }
}
