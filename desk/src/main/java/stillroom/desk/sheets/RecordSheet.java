package stillroom.desk.sheets;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Collections;
import java.util.List;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.LogLine;
import stillroom.desk.batches.LogWords;
import stillroom.desk.batches.ReadingRows;
import stillroom.desk.batches.Shown;
import stillroom.desk.pictures.Shots;
import stillroom.desk.sheets.BatchRecord.Fact;
import stillroom.desk.sheets.BatchRecord.Made;
import stillroom.desk.sheets.BatchRecord.Weighing;
import stillroom.desk.shell.Format;
import stillroom.formulary.batch.AsMade;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchEvent.Decided;
import stillroom.formulary.batch.BatchEvent.Poured;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.batch.FillCheck;
import stillroom.formulary.batch.Hold;
import stillroom.formulary.batch.HotPour;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.batch.MadeLine;
import stillroom.formulary.batch.PourCheck;
import stillroom.formulary.batch.Yield;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.workshop.Workshop;

/** Writes the record of a batch from its log. */
public final class RecordSheet {
    private final BatchWork work;
    private final BatchState state;
    private final AsMade made;
    private final LogWords words;
    private final Shown shown;
    private final int decimals;

    public RecordSheet(BatchWork work) {
        this.work = work;
        this.state = work.state();
        this.made = AsMade.of(state, work.formula(), work.book());
        this.shown = new Shown(work.desk().ledger().equipment().balances());
        this.words = new LogWords(work, shown);
        this.decimals = work.desk().ledger().settings().read().decimalsShown();
    }

    public BatchRecord record() {
        Workshop workshop = work.desk().ledger().settings().read();
        return new BatchRecord(
                work.product().name(),
                work.batch().code(),
                workshop.name(),
                workshop.demonstration(),
                Format.moment(work.desk().now(), work.desk().zone()),
                facts(),
                state.pours().stream().map(this::weighing).toList(),
                made.lines().stream().map(this::made).toList(),
                vessels(),
                ReadingRows.of(work),
                pictures(),
                deviations(),
                reconciliation(),
                state.fills().stream()
                        .map(fill -> words.say(fill.event()) + " "
                                + Format.moment(fill.at(), work.desk().zone()) + ", " + fill.by())
                        .toList(),
                fillChecks(),
                concerns(),
                log(),
                state.decision().map(d -> d.event().overruled()).orElse(List.of()),
                state.decision().map(this::decision).orElse(""),
                work.desk().ledger().batches().headHash(work.batch().id()).orElse("no entry yet"));
    }

    private List<BatchRecord.Picture> pictures() {
        return Shots.of(work).stream()
                .filter(shot -> !shot.struck())
                .flatMap(shot -> work.desk().ledger().attachments().get(shot.digest()).stream()
                        .map(bytes -> new BatchRecord.Picture(
                                "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(bytes),
                                shot.when(),
                                shot.words() + " " + shot.taken() + ", " + shot.by())))
                .toList();
    }

    private List<String> fillChecks() {
        return state.concerns().fillChecks().stream()
                .map(entry -> {
                    FillCheck check = FillCheck.of(
                            entry.concern().nominal(),
                            entry.concern().net(),
                            entry.concern().tareDeviation());
                    return check.weighed() + " containers weighed: mean " + Format.figure(check.mean(), 2) + " g of "
                            + Format.grams(entry.concern().nominal()) + " g declared, "
                            + (check.passes() ? "content holds." : String.join(" ", check.says()));
                })
                .toList();
    }

    private List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Product", work.product().name()));
        facts.add(new Fact(
                "Made from", work.version().map(v -> "version " + v.number()).orElse("no formula: weighed free hand")));
        facts.add(new Fact("Opened on", Format.day(work.batch().openedOn())));
        if (!work.log().isEmpty()) {
            LogEntry last = work.log().get(work.log().size() - 1);
            facts.add(new Fact(
                    "Newest entry", Format.moment(last.at(), work.desk().zone()) + ", " + last.by()));
        }
        facts.add(new Fact("Stage", state.stage().words()));
        facts.add(new Fact(
                "Planned", work.plan().map(Plan::batch).map(RecordSheet::g).orElse("-")));
        facts.add(new Fact("Reckoning", work.plan().map(Plan::reckoning).orElse("-")));
        work.product().brief().phBand().ifPresent(band -> facts.add(new Fact("pH band", Format.range(band, 1))));
        return facts;
    }

    private Weighing weighing(Logged<Poured> pour) {
        Poured event = pour.event();
        PourCheck check = state.check(pour);
        return new Weighing(
                pour.number(),
                Format.moment(pour.at(), work.desk().zone()),
                work.cards().name(event.materialKey()),
                event.lot()
                        .map(code -> code + (event.scanned() ? ", scanned" : ""))
                        .orElse("not booked"),
                shown.grams(event.mass(), event.balance()),
                event.vessel(),
                event.balance(),
                pour.by(),
                check.kind().words() + (check.by().isBlank() ? "" : ", " + check.by()));
    }

    private Made made(MadeLine line) {
        return new Made(
                work.cards().name(line.materialKey()),
                line.target().map(target -> asked(line, target)).orElse("-"),
                weighed(line),
                line.toReading()
                        ? "to reading"
                        : line.deviationPercent().map(RecordSheet::signed).orElse(""),
                line.asked().map(asked -> Format.percent(asked, decimals)).orElse("-"),
                Format.decimal(line.made().value(), Math.max(decimals, 2)));
    }

    private String asked(MadeLine line, Grams target) {
        return shown.grams(
                target, work.line(line.lineId()).map(PlannedLine::balance).orElse(""));
    }

    private String weighed(MadeLine line) {
        return shown.grams(
                line.actual(),
                state.pours().stream()
                        .map(Logged::event)
                        .filter(pour -> pour.materialKey().equals(line.materialKey()))
                        .map(Poured::balance)
                        .toList());
    }

    private List<BatchRecord.Vessel> vessels() {
        return state.vessels().stream()
                .map(vessel -> new BatchRecord.Vessel(
                        vessel.name(),
                        vessel.tare().map(RecordSheet::g).orElse("not weighed"),
                        vessel.clean().isBlank() ? "not noted" : vessel.clean()))
                .toList();
    }

    private List<String> deviations() {
        List<String> deviations = new ArrayList<>(offTarget());
        made.hotPours().stream().map(this::hot).forEach(deviations::add);
        work.holds().stream().filter(Hold::over).map(this::overrun).forEach(deviations::add);
        state.vessels()
                .forEach(vessel -> vessel.asItIs()
                        .ifPresent(why ->
                                deviations.add(vessel.name() + " was used without being sanitised. Reason: " + why)));
        return deviations;
    }

    private String overrun(Hold hold) {
        return hold.says() + ". "
                + hold.reason(state).map(why -> "Reason: " + why).orElse("No reason is given.");
    }

    /** What stopped the batch, what was awaited and came, what was kept and checked, in the order of the log. */
    private List<String> concerns() {
        return work.log().stream()
                .filter(entry -> !state.struck().contains(entry.number()))
                .filter(entry -> entry.event() instanceof BatchEvent.Concerned)
                .map(entry -> Format.moment(entry.at(), work.desk().zone()) + ", " + entry.by() + ": "
                        + words.say(entry.event()))
                .toList();
    }

    private String hot(HotPour hot) {
        Logged<Poured> pour = hot.pour();
        String accepted = pour.event()
                .lineId()
                .map(id -> state.accepted().getOrDefault(id, ""))
                .orElse("");
        String note = pour.event().note();
        String why = accepted.isBlank() ? "No reason is given." : "Reason: " + accepted;
        return work.cards().name(pour.event().materialKey()) + ": " + hot.says() + " (entry " + pour.number() + "). "
                + (note.isBlank() ? why : "Note: " + note);
    }

    private List<String> offTarget() {
        return made.deviations().stream()
                .map(line -> work.cards().name(line.materialKey()) + ": asked "
                        + line.target()
                                .map(target -> asked(line, target) + " g")
                                .orElse("nothing") + ", weighed "
                        + weighed(line) + " g. "
                        + reason(line))
                .toList();
    }

    private String reason(MadeLine line) {
        String accepted = state.accepted().get(line.lineId());
        if (accepted != null) {
            return "Reason: " + accepted;
        }
        return state.pours().stream()
                .filter(pour ->
                        pour.event().lineId().filter(line.lineId()::equals).isPresent())
                .map(pour -> pour.event().note())
                .filter(note -> !note.isBlank())
                .findFirst()
                .map(note -> "Note: " + note)
                .orElse("No reason is given.");
    }

    private List<Fact> reconciliation() {
        Yield yield = Yield.of(state);
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Put in", g(yield.added())));
        facts.add(new Fact("Evaporated (weighed back)", g(yield.evaporated())));
        facts.add(new Fact("Samples", g(yield.samples())));
        facts.add(new Fact("Handed over to other batches", g(yield.handedOver())));
        facts.add(new Fact("Retained", g(yield.retained())));
        facts.add(new Fact(
                "Filled",
                g(yield.filled())
                        + yield.filledPercent()
                                .map(p -> " (" + Format.decimal(p, 1) + " %)")
                                .orElse("")));
        facts.add(new Fact(
                "Unaccounted for (walls, tools, still in vessels)",
                g(yield.unaccounted())
                        + yield.lossPercent()
                                .map(p -> " (" + Format.decimal(p, 1) + " %)")
                                .orElse("")));
        return facts;
    }

    /** The points that were overruled stand below it, one a line. */
    private String decision(Logged<Decided> decided) {
        return said(decided.event()) + " "
                + Format.moment(decided.at(), work.desk().zone());
    }

    private String said(Decided event) {
        return words.say(new Decided(event.decision(), event.by(), event.reason(), List.of()));
    }

    /** Oldest first; what the decision overruled is told once, where the decision stands. */
    private List<LogLine> log() {
        List<LogLine> lines = new ArrayList<>(LogLine.of(work, words));
        Collections.reverse(lines);
        state.decision()
                .ifPresent(decided -> lines.replaceAll(
                        line -> line.number() == decided.number() ? line.saying(said(decided.event())) : line));
        return lines;
    }

    private static String signed(BigDecimal percent) {
        return (percent.signum() > 0 ? "+" : "") + Format.decimal(percent, 1) + " %";
    }

    private static String g(Grams mass) {
        return Format.reckonedGrams(mass) + " g";
    }
}
