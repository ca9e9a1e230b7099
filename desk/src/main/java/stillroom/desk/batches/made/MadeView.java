package stillroom.desk.batches.made;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchHead;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.LogWords;
import stillroom.desk.batches.Masses;
import stillroom.desk.batches.made.MadePage.LineMade;
import stillroom.desk.batches.made.MadePage.LotMade;
import stillroom.desk.batches.made.MadePage.Went;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Judgement;
import stillroom.formulary.batch.AsMade;
import stillroom.formulary.batch.Drawn;
import stillroom.formulary.batch.HeatTime;
import stillroom.formulary.batch.MadeBook;
import stillroom.formulary.batch.MadeLine;
import stillroom.formulary.batch.Yield;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.quantity.Grams;

/** Puts the page of what was made together. */
final class MadeView {
    private final BatchWork work;
    private final AsMade made;
    private final MadeBook lots;
    private final int decimals;

    MadeView(BatchWork work) {
        this.work = work;
        this.lots = work.madeBook();
        this.made = AsMade.of(work.state(), work.formula(), work.book());
        this.decimals = work.desk().ledger().settings().read().decimalsShown();
    }

    MadePage page(Frame frame) {
        LogWords words = new LogWords(work);
        return new MadePage(
                frame,
                BatchHead.of(work),
                made.lines().stream().map(this::line).toList(),
                masses(),
                work.state().corrections().stream()
                        .map(pour -> words.say(pour.event()))
                        .toList(),
                work.state().drawn().stream()
                        .filter(drawn -> drawn.kind() == Drawn.Kind.SAMPLE)
                        .map(drawn -> Format.grams(drawn.said()) + " g: " + drawn.what())
                        .toList(),
                made.lots().stream().map(this::lot).toList(),
                lotWords(),
                made.evaporated().says(),
                judged(),
                decimals);
    }

    private Optional<Judged> judged() {
        if (made.added().signum() <= 0) {
            return Optional.empty();
        }
        Subject subject = made.subject(work.product().brief(), work.formula(), work.state());
        Evaluation evaluation = Judgement.of(work.desk(), subject, lots.book());
        if (subject.measuredPh().isEmpty()) {
            return Optional.of(Judged.of(evaluation));
        }
        return Optional.of(Judged.read(evaluation, Judgement.of(work.desk(), subject.unread(), lots.book())));
    }

    private LineMade line(MadeLine line) {
        return new LineMade(
                work.cards().name(line.materialKey()),
                line.target().map(Masses::shown).orElse(""),
                Masses.shown(line.actual()),
                line.target()
                        .filter(target -> !line.toReading())
                        .map(target -> signed(line.actual().minus(target)))
                        .orElse(""),
                line.deviationPercent().map(MadeView::signedPercent).orElse(""),
                line.asked().map(asked -> Format.percent(asked, decimals)).orElse(""),
                Format.decimal(line.made().value(), decimals),
                line.toReading() && line.target().isPresent(),
                state(line),
                work.state().accepted().getOrDefault(line.lineId(), ""));
    }

    private String state(MadeLine line) {
        if (line.target().isEmpty()) {
            return "beyond the plan";
        }
        if (line.toReading()) {
            return "up to the reading";
        }
        if (line.withinTolerance()) {
            return "within tolerance";
        }
        if (work.state().accepted().containsKey(line.lineId())) {
            return "off, explained";
        }
        return line.actual().isZero() ? "not weighed" : "off";
    }

    private Went masses() {
        Yield yield = Yield.of(work.state());
        return new Went(
                Masses.shown(yield.added()),
                Masses.shown(yield.evaporated()),
                Masses.shown(yield.samples()),
                Masses.shown(yield.filled()),
                Masses.shown(yield.retained()),
                Masses.shown(work.state().inVessels().net()));
    }

    /** For which materials the certificate of the lot counts, and where it could not. */
    private List<String> lotWords() {
        List<String> said = new ArrayList<>();
        if (!lots.changed().isEmpty()) {
            said.add("Judged by the certificates of the lots, not by the cards: " + String.join(", ", lots.changed())
                    + ".");
        }
        said.addAll(lots.reasons());
        HeatTime.of(work.log(), work.state().struck(), work.book())
                .forEach(heat -> said.add(work.cards().name(heat.materialKey()) + " stood "
                        + LogWords.plain(heat.minutes()) + " min above the " + LogWords.plain(heat.limit())
                        + " °C that it bears, up to " + LogWords.plain(heat.hottest()) + " °C."));
        return said;
    }

    private LotMade lot(stillroom.formulary.batch.MadeLot lot) {
        return new LotMade(
                work.cards().name(lot.materialKey()),
                lot.lot().orElse("not booked"),
                Masses.shown(lot.added()),
                Masses.shown(lot.inProduct()));
    }

    private static String signed(Grams mass) {
        return (mass.signum() > 0 ? "+" : "") + Masses.shown(mass);
    }

    private static String signedPercent(BigDecimal percent) {
        return (percent.signum() > 0 ? "+" : "") + Format.decimal(percent, 1);
    }
}
