package stillroom.desk.dosing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import stillroom.desk.batches.BatchHead;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.LogWords;
import stillroom.desk.batches.PhTrends;
import stillroom.desk.dosing.DosingPage.Options;
import stillroom.desk.dosing.DosingPage.Row;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Judgement;
import stillroom.desk.shell.Typed;
import stillroom.formulary.Problem;
import stillroom.formulary.batch.Vessel;
import stillroom.formulary.constants.PhConstants;
import stillroom.formulary.dosing.InBulk;
import stillroom.formulary.dosing.PhSession;
import stillroom.formulary.dosing.PhTasks;
import stillroom.formulary.dosing.SessionReading;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.meter.MeterMarks;
import stillroom.formulary.meter.MeterStanding;
import stillroom.formulary.meter.PhMeter;
import stillroom.formulary.quantity.Grams;
import stillroom.science.dosing.DosingTask;

/** Puts the page together. */
final class DosingView {
    private static final Set<String> SETTINGS = Set.of("target", "halfBand");
    private static final Set<String> FIELDS = Set.of(
            "pH",
            "celsius",
            "minutes",
            "sample",
            "correctorGrams",
            "waterGrams",
            "added",
            "by",
            "expected",
            "low",
            "high",
            "reserve");

    private static final double ROUNDING = 1e-9;

    private final BatchWork work;
    private final Input input;
    private final PhConstants constants;
    private final MeterMarks meters;
    private final Shelf shelf;
    private final DosingAsk ask;
    private final PhSession session;
    private final DosingCards cards;

    DosingView(BatchWork work, Input input, PhConstants constants) {
        this.work = work;
        this.input = input;
        this.constants = constants;
        this.meters = PhTrends.meters(work);
        this.shelf = new Shelf(work);
        this.ask = new AskReader(work, input, shelf, meters).ask();
        this.session = PhSession.of(work.log(), ask.vessel());
        this.cards = DosingCards.of(work, ask);
    }

    DosingAsk ask() {
        return ask;
    }

    PhSession session() {
        return session;
    }

    DosingPage page(Frame frame, String act) {
        Optional<PhTasks> tasks = ask.wish().map(wish -> new PhTasks(session, wish, cards.book(), constants));
        Optional<DosingTask> task =
                tasks.flatMap(one -> one.bulk().match(Optional::of, because -> Optional.<DosingTask>empty()));
        DoseView dose = new DoseView(work, session, ask, tasks, task);
        Typed typed = act.isEmpty() ? Typed.NOTHING : input.typed();
        return new DosingPage(
                frame,
                BatchHead.of(work),
                work.path() + "/ph",
                ask.fields(),
                new Typed(ask.fields(), settingsProblems()),
                options(),
                typed,
                act,
                general(typed),
                requestId(typed),
                typed.value("by", work.who().pours()),
                target(),
                expected(),
                meter(),
                gap(tasks),
                session.readNow().map(reading -> Format.figure(reading.pH(), 2)).orElse(""),
                forgotten(),
                rows(),
                dose.prescribed(),
                dose.notPrescribed(),
                dose.titrating(),
                dose.refusals(),
                dose.inBand(),
                dose.proposal(),
                task.isPresent() ? new Overshooting(work, session, ask, shelf, constants).look() : Optional.empty(),
                dose.chart(),
                dose.dose().map(one -> new Consequences(work, session, ask, cards.book()).of(one)),
                new EarlierBatches(work).rows(),
                cautions(dose),
                inBand() || act.equals("reserve")
                        ? new Reserving(work, session, ask).offer(dose.dose())
                        : Optional.empty());
    }

    /** What a correction took is known once the bulk, as it stands, was read within its band. */
    private boolean inBand() {
        return session.readNow()
                .flatMap(reading -> ask.target().map(target -> Math.abs(reading.pH() - target)))
                .filter(away -> away <= ask.halfBand() + ROUNDING)
                .isPresent();
    }

    private List<Problem> settingsProblems() {
        return input.typed().problems().stream()
                .filter(problem -> SETTINGS.contains(problem.field()))
                .toList();
    }

    private static List<String> general(Typed typed) {
        return typed.problems().stream()
                .filter(problem -> !FIELDS.contains(problem.field()) && !SETTINGS.contains(problem.field()))
                .map(Problem::sentence)
                .toList();
    }

    /** A form that could not be taken keeps its name, so that it is still one act when it is sent again. */
    private static String requestId(Typed typed) {
        String again = typed.value("requestId");
        return again.isEmpty() ? UUID.randomUUID().toString() : again;
    }

    private Options options() {
        List<Choice> electrodes = new ArrayList<>();
        meters.meters().forEach(meter -> electrodes.add(new Choice(meter.name(), meter.name())));
        if (meters.meters().isEmpty() || !meters.meter(ask.electrode()).isPresent()) {
            electrodes.add(new Choice(ask.strips() ? "" : ask.electrode(), "A meter that is not on record"));
        }
        electrodes.add(new Choice(DosingAsk.STRIP, "Strips"));
        return new Options(
                work.state().openVessels().stream()
                        .map(Vessel::name)
                        .map(name -> new Choice(name, name))
                        .toList(),
                shelf.correctors(),
                shelf.lots(ask.corrector()),
                work.desk().ledger().equipment().balances().stream()
                        .map(balance ->
                                new Choice(balance.name(), balance.name() + " · " + balance.step() + " g steps"))
                        .toList(),
                electrodes,
                ask.corrector().isEmpty() ? "" : work.cards().name(ask.corrector()));
    }

    private String target() {
        return ask.target()
                .map(pH -> Format.figure(pH, 2) + " ± " + Format.figure(ask.halfBand(), 2))
                .orElse("");
    }

    private String expected() {
        if (session.now().grams() <= 0) {
            return "";
        }
        Evaluation evaluation = Judgement.of(
                work.desk(),
                session.now().subject(work.product().brief(), work.formula(), cards.book(), Optional.empty()),
                cards.book());
        return evaluation
                .figures()
                .ph()
                .match(
                        figure -> "By what is in it one expects pH " + Format.range(figure.low(), figure.high(), 1)
                                + " (" + figure.method() + ").",
                        because -> "What to expect is not known: " + because + ".");
    }

    private String meter() {
        if (ask.strips()) {
            return "Strips are good for ±0.3 to 0.5 at best; with them half a step is advised, never the whole.";
        }
        Optional<PhMeter> meter = meters.meter(ask.electrode());
        if (meter.isEmpty()) {
            return "This meter is not on record, so nothing shows that it is right.";
        }
        MeterStanding standing = MeterStanding.of(
                meter.get(),
                meters.calibrations(),
                work.desk().now(),
                work.desk().zone());
        if (!standing.isSound()) {
            return "Calibrate before reading: " + standing.says() + ".";
        }
        boolean outside = ask.target()
                .filter(pH -> !standing.calibration().orElseThrow().brackets(pH))
                .isPresent();
        return outside ? "The two buffers of the last calibration do not bracket the target." : "";
    }

    private String gap(Optional<PhTasks> tasks) {
        if (ask.vessel().isEmpty()) {
            return "No vessel is in use yet; make one ready at the bench and weigh something into it.";
        }
        if (tasks.isEmpty()) {
            return "Where should the pH go? The product's brief names no band; type a target below.";
        }
        return tasks.get().bulk().match(task -> "", because -> sentence(because));
    }

    static String sentence(String because) {
        return because.isEmpty() ? "" : Character.toUpperCase(because.charAt(0)) + because.substring(1) + ".";
    }

    private String forgotten() {
        return session.forgotten() == 0
                ? ""
                : "An earlier titration no longer counts: something other than acid or base went into "
                        + session.vessel() + " after it. Titrate a new sample.";
    }

    private List<Row> rows() {
        return session.readings().stream().map(this::row).toList();
    }

    private Row row(SessionReading reading) {
        String mark = work.entry(reading.entry())
                .map(entry -> entry.event() instanceof stillroom.formulary.batch.BatchEvent.ReadingTaken taken
                        ? meters.of(taken.how(), entry.at())
                        : session.titration()
                                .map(begun -> meters.of(begun.event().how(), entry.at()))
                                .orElse(""))
                .orElse("");
        return new Row(
                Format.moment(reading.at(), work.desk().zone()),
                reading.ofBulk() ? "bulk" : "sample",
                added(reading),
                LogWords.plain(reading.pH()),
                mark,
                work.path() + "/bench?do=strike&entry=" + reading.entry());
    }

    private String added(SessionReading reading) {
        if (!reading.ofBulk()) {
            return Format.grams(reading.sampleGrams()) + " g dilution";
        }
        return reading.moment().additions().isEmpty()
                ? "nothing yet"
                : reading.moment().additions().stream().map(this::said).collect(Collectors.joining(", "));
    }

    private String said(InBulk poured) {
        return Format.grams(new Grams(poured.mass().value().setScale(3, java.math.RoundingMode.HALF_EVEN))) + " g "
                + work.cards().name(poured.materialKey());
    }

    private List<String> cautions(DoseView dose) {
        List<String> cautions = new ArrayList<>(dose.cautions());
        work.cards().cautions(ask.corrector()).stream()
                .filter(said -> !cautions.contains(said))
                .forEach(cautions::add);
        if (!cards.reason().isEmpty()) {
            cautions.add(cards.reason());
        }
        return cautions;
    }
}
