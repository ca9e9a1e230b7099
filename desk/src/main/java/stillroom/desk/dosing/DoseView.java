package stillroom.desk.dosing;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.dosing.DosingPage.Prescribed;
import stillroom.desk.dosing.DosingPage.Proposal;
import stillroom.desk.dosing.DosingPage.Titrating;
import stillroom.desk.shell.Format;
import stillroom.formulary.batch.BatchEvent.TitrationBegun;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.dosing.PhSession;
import stillroom.formulary.dosing.PhTasks;
import stillroom.formulary.dosing.SessionReading;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.plan.PlannedLine;
import stillroom.science.dosing.Caution;
import stillroom.science.dosing.Dose;
import stillroom.science.dosing.DosingAnswer;
import stillroom.science.dosing.DosingTask;
import stillroom.science.dosing.Prescription;
import stillroom.science.dosing.Refusal;
import stillroom.science.dosing.SampleTitration;
import stillroom.science.equilibrium.RangeLimit;

/** The computed part of the page: sample, next addition, dose. */
final class DoseView {
    private static final int ADDITIONS = 5;
    private static final double DILUTION_OVER_EXPECTED = 3;
    /** The corrector in the dilution spans as many steps of the balance, so that its strength is known to half a percent. */
    private static final double LEAST_STEPS = 100;

    private static final double MOST_DILUTION_GRAMS = 500;

    private final BatchWork work;
    private final PhSession session;
    private final DosingAsk ask;
    private final Optional<PhTasks> tasks;
    private final Optional<DosingTask> task;
    private final Optional<DosingAnswer> answer;

    DoseView(BatchWork work, PhSession session, DosingAsk ask, Optional<PhTasks> tasks, Optional<DosingTask> task) {
        this.work = work;
        this.session = session;
        this.ask = ask;
        this.tasks = tasks;
        this.task = task;
        this.answer = task.filter(one -> one.readings().size() > 1).flatMap(one -> tasks.map(some -> some.next(one)));
    }

    private String grams(double value) {
        int decimals = Math.max(0, new java.math.BigDecimal(DosingAsk.plain(ask.step())).scale());
        return Format.figure(value, decimals);
    }

    Optional<Dose> dose() {
        return answer.flatMap(one -> one.match(
                proposed -> Optional.of(proposed.dose()), inBand -> Optional.empty(), refused -> Optional.empty()));
    }

    List<String> refusals() {
        return answer.map(one -> one.match(
                        proposed -> List.<String>of(),
                        inBand -> List.<String>of(),
                        refused -> refused.reasons().stream()
                                .map(Refusal::sentence)
                                .map(DosingView::sentence)
                                .toList()))
                .orElse(List.of());
    }

    String inBand() {
        return answer.map(one -> one.match(
                        proposed -> "",
                        inBand -> "pH " + Format.figure(inBand.pH(), 2) + " ("
                                + Format.range(inBand.low(), inBand.high(), 2) + "): nothing is needed.",
                        refused -> ""))
                .orElse("");
    }

    /** Where the pH of the bulk is known, no sample is being titrated and the corrector goes the right way. */
    Optional<Prescribed> prescribed() {
        if (tasks.isEmpty() || session.readNow().isEmpty()) {
            return Optional.empty();
        }
        double pH = session.readNow().map(SessionReading::pH).orElseThrow();
        return tasks.get().prescription(pH).match(one -> Optional.of(prescribed(one)), because -> Optional.empty());
    }

    /** Why no sample can be prescribed; empty when it can. */
    String notPrescribed() {
        return tasks.flatMap(some -> session.readNow().map(reading -> some.prescription(reading.pH())))
                .map(one -> one.match(known -> "", DosingView::sentence))
                .orElse("");
    }

    private Prescribed prescribed(Prescription one) {
        double wanted = Math.max(
                DILUTION_OVER_EXPECTED * one.expectedGrams(), LEAST_STEPS * ask.step() / one.dilutionMassFraction());
        double mass = Math.max(20, Math.ceil(Math.min(wanted, MOST_DILUTION_GRAMS) / 10) * 10);
        boolean pure = one.dilutionMassFraction() == 1;
        double corrector = mass * one.dilutionMassFraction();
        String percent = Format.figure(100 * one.dilutionMassFraction(), 1);
        return new Prescribed(
                grams(one.sampleGrams()),
                percent,
                pure
                        ? ""
                        : "Weigh " + grams(corrector) + " g " + work.cards().name(ask.corrector()) + " into "
                                + grams(mass - corrector) + " g water: " + percent
                                + " % of it. Write down what the balance shows.",
                pure ? "" : grams(corrector),
                pure ? "" : grams(mass - corrector),
                grams(one.firstGrams()),
                grams(one.expectedGrams()));
    }

    Optional<Titrating> titrating() {
        return session.titration().map(this::titrating);
    }

    private Titrating titrating(Logged<TitrationBegun> begun) {
        TitrationBegun event = begun.event();
        List<SessionReading> read = session.ofSample();
        double inIt =
                read.isEmpty() ? 0 : read.get(read.size() - 1).sampleGrams().doubleValue();
        Optional<Double> more = read.isEmpty() ? Optional.empty() : next(read.size());
        String says = Format.grams(event.sample()) + " g of " + event.vessel() + " with "
                + work.cards().name(event.corrector())
                + (event.dilution().value().intValue() == 100
                                && event.dilution().value().scale() <= 0
                        ? ", as it is"
                        : ", diluted to " + Format.percent(event.dilution(), 1) + " %");
        return new Titrating(
                begun.number(),
                says,
                grams(inIt),
                more.map(this::grams).orElse(""),
                more.map(grams -> grams(grams + inIt)).orElse(""));
    }

    private Optional<Double> next(int reads) {
        Outcome<DosingTask> sample = tasks.map(PhTasks::sample).orElseGet(() -> Outcome.notKnown("no target"));
        return sample.match(
                one -> {
                    boolean sound = one.targetPh() != one.readings().get(0).pH();
                    OptionalDouble grams = sound && reads <= ADDITIONS
                            ? SampleTitration.nextGrams(one, Math.max(1, ADDITIONS + 1 - reads))
                            : OptionalDouble.empty();
                    return grams.isPresent() ? Optional.of(grams.getAsDouble()) : Optional.<Double>empty();
                },
                because -> Optional.empty());
    }

    Optional<Proposal> proposal() {
        return dose().map(dose -> new Proposal(
                grams(dose.grams()),
                work.cards().name(ask.corrector()),
                stage(dose),
                grams(dose.gramsToTarget()) + " g are missing in all (95 % interval "
                        + Format.range(
                                dose.lowGrams(),
                                dose.highGrams(),
                                Math.max(0, new java.math.BigDecimal(DosingAsk.plain(ask.step())).scale()))
                        + " g)",
                Format.figure(dose.after().pH(), 2) + " ("
                        + Format.range(dose.after().low(), dose.after().high(), 2) + ")",
                Format.figure(dose.percentOfBulk(), 3),
                Format.figure(1000 * dose.bufferCapacityMolPerKg(), 1),
                dose.exceeded().stream().map(RangeLimit::sentence).toList(),
                bench(dose)));
    }

    private static String stage(Dose dose) {
        return switch (dose.stage()) {
            case FIRST_PART ->
                "First part: 70 % of the lower end of the interval. Stir, read the bulk here, and the rest is proposed.";
            case REST -> "The rest: the reading after the first part makes it sure enough.";
            case HALF_STEP -> "Half a step: strips do not allow more. Stir, read again.";
        };
    }

    /** The bench's own form, on the line of the formula that is added up to a pH where there is one. */
    private String bench(Dose dose) {
        boolean acid = task.map(one -> one.corrector().lowersPh()).orElse(true);
        String about = work.plan().stream()
                .flatMap(plan -> plan.lines().stream())
                .filter(this::isPhLine)
                .map(line -> "do=weigh&line=" + coded(line.lineId()))
                .findFirst()
                .orElse("do=correct&purpose=" + (acid ? "CORRECTION_ACID" : "CORRECTION_BASE") + "&material="
                        + coded(ask.corrector()));
        String dosed = String.format(Locale.ROOT, "%s", grams(dose.grams()));
        return work.path() + "/bench?" + about + "&vessel=" + coded(ask.vessel()) + "&dose=" + coded(dosed) + "&lot="
                + coded(ask.lot());
    }

    private boolean isPhLine(PlannedLine line) {
        return line.materialKey().equals(ask.corrector())
                && work.formula()
                        .line(line.lineId())
                        .filter(one ->
                                one.amount() instanceof Amount.ToReading amount && amount.reading() == ReadingKind.PH)
                        .isPresent();
    }

    private static String coded(String value) {
        return URLEncoder.encode(value, StandardCharsets.UTF_8);
    }

    Optional<TitrationChart> chart() {
        return task.filter(one -> one.readings().size() > 1)
                .flatMap(one -> TitrationChart.of(
                        session,
                        one,
                        ask,
                        dose().map(Dose::grams),
                        dose().map(Dose::highGrams).orElse(0.0)));
    }

    List<String> cautions() {
        return task.map(one -> Caution.of(one.corrector()).stream()
                        .map(Caution::sentence)
                        .toList())
                .orElse(List.of());
    }
}
