package stillroom.formulary.dosing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.batch.BatchEvent.TitrationBegun;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.constants.PhConstants;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.judgement.pot.WaterChemistry;
import stillroom.formulary.material.MaterialBook;
import stillroom.science.dosing.Addition;
import stillroom.science.dosing.Corrector;
import stillroom.science.dosing.CurvePoint;
import stillroom.science.dosing.Dose;
import stillroom.science.dosing.Dosing;
import stillroom.science.dosing.DosingAnswer;
import stillroom.science.dosing.DosingTask;
import stillroom.science.dosing.KnownChemistry;
import stillroom.science.dosing.PhReading;
import stillroom.science.dosing.Prescription;
import stillroom.science.dosing.SampleTitration;
import stillroom.science.dosing.Vessel;

/** Turns what stands in a log and on cards into the task that is computed. */
public final class PhTasks {
    private static final double ROOM_CELSIUS = 25;
    private static final double LEAST_WATER = 0.03;
    /** Readings of a sample: one before and two on the way. */
    private static final int ENOUGH_TO_FIT = 3;

    private final PhSession session;
    private final PhWish wish;
    private final MaterialBook book;
    private final PhConstants constants;
    private final Correctors correctors;

    public PhTasks(PhSession session, PhWish wish, MaterialBook book, PhConstants constants) {
        this.session = session;
        this.wish = wish;
        this.book = book;
        this.constants = constants;
        this.correctors = new Correctors(book, constants);
    }

    /** The task of dosing the bulk, or what keeps it from being computed. */
    public Outcome<DosingTask> bulk() {
        return chemistry().match(known -> bulk(known), Outcome::notKnown);
    }

    private Outcome<DosingTask> bulk(KnownChemistry known) {
        return correctors
                .of(wish.corrector())
                .match(
                        corrector -> readings()
                                .match(
                                        read -> additions(session.now())
                                                .match(
                                                        poured -> Outcome.known(new DosingTask(
                                                                known,
                                                                read,
                                                                session.now().liquidGrams(),
                                                                poured,
                                                                corrector.corrector(),
                                                                wish.target(),
                                                                wish.halfBand(),
                                                                wish.instrument())),
                                                        Outcome::notKnown),
                                        Outcome::notKnown),
                        Outcome::notKnown);
    }

    /** The task of titrating the sample: its own readings, the corrector as it was diluted. */
    public Outcome<DosingTask> sample() {
        Optional<Corrector> dilution = dilution();
        if (dilution.isEmpty()) {
            return Outcome.notKnown("no sample was taken yet");
        }
        return bulk().match(
                        task -> {
                            List<PhReading> inSample = task.readings().stream()
                                    .filter(reading -> reading.vessel() == Vessel.SAMPLE)
                                    .toList();
                            return inSample.isEmpty()
                                    ? Outcome.<DosingTask>notKnown("the sample was not read yet")
                                    : Outcome.known(new DosingTask(
                                            task.chemistry(),
                                            inSample,
                                            task.bulkGrams(),
                                            task.bulkAdditions(),
                                            dilution.get(),
                                            task.targetPh(),
                                            task.halfBand(),
                                            task.instrument()));
                        },
                        Outcome::notKnown);
    }

    /** How to titrate a sample of a bulk whose pH was read. */
    public Outcome<Prescription> prescription(double pH) {
        return chemistry()
                .match(
                        known -> correctors
                                .of(wish.corrector())
                                .match(corrector -> prescribe(known, corrector.corrector(), pH), Outcome::notKnown),
                        Outcome::notKnown);
    }

    private Outcome<Prescription> prescribe(KnownChemistry known, Corrector corrector, double pH) {
        Optional<Prescription> found = SampleTitration.prescribe(
                known, pH, wish.target(), corrector, session.now().grams(), wish.instrument());
        return found.map(Outcome::known)
                .orElseGet(() -> Outcome.notKnown(
                        (wish.target() < pH) == corrector.lowersPh()
                                ? corrector.name() + " does not reach pH " + wish.target()
                                        + " even in equal mass; take a stronger one"
                                : "from pH " + pH + " to " + wish.target() + " takes "
                                        + (corrector.lowersPh() ? "a base" : "an acid") + ", but " + corrector.name()
                                        + " is " + (corrector.lowersPh() ? "an acid" : "a base")));
    }

    /**
     * What to pour next. Where the corrector is not the one that the sample was titrated with, the doubt about its strength
     * widens the interval and shortens the first part; with the same lot it cancels.
     */
    public DosingAnswer next(DosingTask task) {
        DosingAnswer answer = Dosing.next(task);
        double doubt = strengthDoubt();
        return doubt > 0 && answer instanceof DosingAnswer.Proposed proposed
                ? new DosingAnswer.Proposed(widened(task, proposed.dose(), doubt))
                : answer;
    }

    private static Dose widened(DosingTask task, Dose dose, double doubt) {
        double step = task.instrument().balanceStepGrams();
        double grams = dose.stage() == Dose.Stage.FIRST_PART
                ? Math.max(Math.floor(dose.grams() * (1 - doubt) / step), 1) * step
                : dose.grams();
        List<CurvePoint> there = Dosing.curve(task, grams, 2);
        CurvePoint after = there.get(there.size() - 1);
        return new Dose(
                grams,
                dose.stage(),
                dose.gramsToTarget(),
                dose.lowGrams() * (1 - doubt),
                dose.highGrams() * (1 + doubt),
                dose.percentOfBulk() * grams / dose.grams(),
                dose.now(),
                new Dose.State(
                        after.pH(), after.low(), after.high(), dose.after().ionicStrengthMolPerKg()),
                dose.bufferCapacityMolPerKg(),
                dose.exceeded(),
                dose.cautions());
    }

    /** How unsure the corrector's strength is, where it is not the one that the sample was titrated with [-]. */
    public double strengthDoubt() {
        boolean same = session.titration()
                .map(Logged::event)
                .filter(begun -> begun.corrector().equals(wish.corrector())
                        && begun.lot().equals(wish.lot()))
                .isPresent();
        return same ? 0 : correctors.of(wish.corrector()).match(Correctors.Known::strengthSpread, because -> 0.0);
    }

    private Outcome<KnownChemistry> chemistry() {
        if (session.now().liquidGrams() <= 0) {
            return Outcome.notKnown("nothing is in " + session.vessel() + " yet");
        }
        WaterChemistry held = WaterChemistry.of(session.now().liquidAlone(book), book, atHand());
        if (held.waterFraction() < LEAST_WATER) {
            return Outcome.notKnown("no pH: there is no water phase in " + session.vessel());
        }
        return Outcome.known(new KnownChemistry(held.components(), held.ions(), held.waterFraction(), celsius()));
    }

    /**
     * Constants of what gathers are known as ranges only. A first estimate takes their middles, as the formula's pH does;
     * once a sample is titrated, its curve tells more, and a buffer that is taken as known could not be fitted away.
     */
    private PhConstants atHand() {
        return session.ofSample().size() < ENOUGH_TO_FIT ? constants : constants.dissolvedAlone();
    }

    private double celsius() {
        return session.titration()
                .map(Logged::event)
                .flatMap(TitrationBegun::celsius)
                .filter(celsius -> celsius >= 5 && celsius <= 60)
                .orElse(ROOM_CELSIUS);
    }

    private Optional<Corrector> dilution() {
        return session.titration()
                .map(Logged::event)
                .flatMap(begun -> correctors
                        .of(begun.corrector())
                        .match(
                                known -> Optional.of(Correctors.diluted(known.corrector(), begun.dilution())),
                                because -> Optional.empty()));
    }

    private Outcome<List<PhReading>> readings() {
        List<PhReading> all = new ArrayList<>();
        for (SessionReading reading : session.readings()) {
            Outcome<PhReading> one = reading(reading);
            if (one instanceof Outcome.NotKnown<PhReading> gap) {
                return Outcome.notKnown(gap.because());
            }
            all.add(((Outcome.Known<PhReading>) one).value());
        }
        return Outcome.known(List.copyOf(all));
    }

    private Outcome<PhReading> reading(SessionReading reading) {
        double share = reading.takenGrams() / reading.moment().grams();
        return additions(reading.moment())
                .match(
                        poured -> {
                            List<Addition> inIt = new ArrayList<>(poured.stream()
                                    .map(one -> new Addition(one.corrector(), one.grams() * share))
                                    .toList());
                            if (!reading.ofBulk()) {
                                dilution()
                                        .ifPresent(corrector -> inIt.add(new Addition(
                                                corrector, reading.sampleGrams().doubleValue())));
                            }
                            return Outcome.known(new PhReading(
                                    reading.ofBulk() ? Vessel.BULK : Vessel.SAMPLE,
                                    reading.moment().liquidGrams() * share,
                                    inIt,
                                    reading.pH()));
                        },
                        Outcome::notKnown);
    }

    private Outcome<List<Addition>> additions(BulkMoment moment) {
        List<Addition> additions = new ArrayList<>();
        for (InBulk poured : moment.additions()) {
            Outcome<Correctors.Known> known = correctors.of(poured.materialKey());
            if (known instanceof Outcome.NotKnown<Correctors.Known> gap) {
                return Outcome.notKnown("acid or base in the bulk cannot be counted: " + gap.because());
            }
            additions.add(new Addition(
                    ((Outcome.Known<Correctors.Known>) known).value().corrector(),
                    Math.max(poured.mass().doubleValue(), 0)));
        }
        return Outcome.known(List.copyOf(additions));
    }
}
