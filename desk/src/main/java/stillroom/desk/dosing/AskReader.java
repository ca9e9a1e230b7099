package stillroom.desk.dosing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.shell.Input;
import stillroom.formulary.batch.BatchEvent.TitrationBegun;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.batch.Vessel;
import stillroom.formulary.dosing.PhSession;
import stillroom.formulary.dosing.SessionReading;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.material.Family;
import stillroom.formulary.meter.MeterMarks;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Interval;

/** Reads what was chosen; what was left open follows from the log, the brief and the shelf. */
final class AskReader {
    private static final double USUAL_HALF_BAND = 0.2;
    private static final Grams USUAL_STEP = Grams.of("0.01");

    private final BatchWork work;
    private final Input input;
    private final Shelf shelf;
    private final MeterMarks meters;

    AskReader(BatchWork work, Input input, Shelf shelf, MeterMarks meters) {
        this.work = work;
        this.input = input;
        this.shelf = shelf;
        this.meters = meters;
    }

    DosingAsk ask() {
        String vessel = vessel();
        PhSession session = PhSession.of(work.log(), vessel);
        Optional<TitrationBegun> begun = session.titration().map(Logged::event);
        Optional<Double> target = target();
        String corrector = corrector(session, begun, target);
        Optional<Balance> balance = balance(begun);
        String electrode = electrode(begun);
        return new DosingAsk(
                vessel,
                corrector,
                lot(corrector, begun),
                target,
                halfBand(target),
                balance.map(Balance::name).orElse(""),
                balance.map(Balance::step).orElse(USUAL_STEP).doubleValue(),
                electrode,
                meters.repeatability(electrode));
    }

    private String vessel() {
        String asked = input.text("vessel");
        List<Vessel> open = work.state().openVessels();
        if (open.stream().anyMatch(one -> one.name().equals(asked))) {
            return asked;
        }
        return open.stream()
                .max(Comparator.comparing((Vessel one) -> one.mixture().net()))
                .map(Vessel::name)
                .orElse("");
    }

    private String corrector(PhSession session, Optional<TitrationBegun> begun, Optional<Double> target) {
        String asked = input.text("corrector");
        if (work.book().material(asked).isPresent()) {
            return asked;
        }
        return begun.map(TitrationBegun::corrector)
                .or(this::ofFormula)
                .or(() -> byDirection(session, target))
                .orElse("");
    }

    private Optional<String> ofFormula() {
        return work.formula().lines().stream()
                .filter(line -> line.amount() instanceof Amount.ToReading amount && amount.reading() == ReadingKind.PH)
                .map(Line::materialKey)
                .findFirst();
    }

    private Optional<String> byDirection(PhSession session, Optional<Double> target) {
        boolean up = session.readNow()
                .map(SessionReading::pH)
                .filter(pH -> target.filter(aim -> aim > pH).isPresent())
                .isPresent();
        return shelf.first(up ? Family.BASE : Family.ACID);
    }

    private String lot(String corrector, Optional<TitrationBegun> begun) {
        String asked = input.text("lot");
        if (input.has("lot") && (asked.isEmpty() || shelf.hasLot(corrector, asked))) {
            return asked;
        }
        return begun.filter(one -> one.corrector().equals(corrector))
                .flatMap(TitrationBegun::lot)
                .orElseGet(() -> shelf.suggestedLot(corrector));
    }

    private Optional<Double> target() {
        Optional<Double> asked = input.number("target", "The target", "0.5", "13.5");
        Brief brief = work.product().brief();
        return asked.or(() -> brief.phTarget()).or(() -> brief.phBand().map(Interval::middle));
    }

    private double halfBand(Optional<Double> target) {
        Optional<Double> asked = input.number("halfBand", "The band", "0.01", "3");
        Optional<Double> ofBrief = work.product()
                .brief()
                .phBand()
                .flatMap(band -> target.map(aim -> Math.min(aim - band.low(), band.high() - aim)))
                .filter(half -> half > 0)
                .map(half -> Math.round(half * 1000) / 1000.0);
        return asked.or(() -> ofBrief).orElse(USUAL_HALF_BAND);
    }

    private Optional<Balance> balance(Optional<TitrationBegun> begun) {
        List<Balance> balances = work.desk().ledger().equipment().balances();
        String asked = input.has("balance")
                ? input.text("balance")
                : begun.map(one -> one.how().getOrDefault("balance", "")).orElse("");
        return balances.stream()
                .filter(one -> one.name().equals(asked))
                .findFirst()
                .or(() -> balances.stream().min(Comparator.comparing(Balance::step)));
    }

    private String electrode(Optional<TitrationBegun> begun) {
        if (input.has("electrode")) {
            return input.text("electrode");
        }
        return begun.map(one -> one.how().getOrDefault("electrode", ""))
                .orElseGet(() ->
                        meters.meters().isEmpty() ? "" : meters.meters().get(0).name());
    }
}
