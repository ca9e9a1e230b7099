package stillroom.desk.batches.fill;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import stillroom.desk.batches.BatchHead;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.LogWords;
import stillroom.desk.batches.Masses;
import stillroom.desk.batches.Who;
import stillroom.desk.batches.fill.FillPage.Fill;
import stillroom.desk.batches.fill.FillPage.Gate;
import stillroom.desk.batches.fill.FillPage.Yielded;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.Problem;
import stillroom.formulary.batch.BatchEvent.Filled;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.batch.MeanFill;
import stillroom.formulary.batch.ReleaseGate;
import stillroom.formulary.batch.Yield;

/** Puts the page of filling and deciding together. */
final class FillView {
    private static final Set<String> GENERAL = Set.of("act", "batch", "vessel", "entry");
    private static final Map<String, String> TITLES = Map.of(
            "ph", "pH in its band",
            "results", "Results in",
            "deviations", "Deviations explained",
            "holds", "Nothing stood too long",
            "content", "Content as declared",
            "steps", "Procedure logged",
            "label", "Label complete, and fits what was made",
            "yield", "Yield within limits",
            "clean", "Vessels clean",
            "record", "Record complete");

    private final BatchWork work;
    private final LogWords words;

    FillView(BatchWork work) {
        this.work = work;
        this.words = new LogWords(work);
    }

    FillPage page(Frame frame, Optional<Input> input, List<ReleaseGate> gates) {
        Typed typed = input.map(Input::typed).orElse(Typed.NOTHING);
        return new FillPage(
                frame,
                BatchHead.of(work),
                typed,
                vessels(),
                pack(),
                new Packing(work).choices(),
                new Packing(work).compatibility(),
                new Contents(work).declaredGrams().map(Format::reckonedGrams).orElse(""),
                new Packing(work)
                        .lastPack()
                        .flatMap(one -> one.tare())
                        .map(Format::grams)
                        .orElse(""),
                work.state().concerns().fillChecks().stream()
                        .map(ChecksShown::of)
                        .toList(),
                fills(),
                yielded(Yield.of(work.state())),
                gates.stream()
                        .map(gate -> new Gate(
                                gate.name(), TITLES.getOrDefault(gate.name(), gate.name()), gate.met(), says(gate)))
                        .toList(),
                work.state()
                        .decision()
                        .map(decided -> words.say(decided.event()))
                        .orElse(""),
                work.state().decision().map(Logged::number).orElse(0),
                UUID.randomUUID().toString(),
                new Who(typed.value("by", work.who().pours()), ""),
                typed.problems().stream()
                        .filter(problem -> GENERAL.contains(problem.field()))
                        .map(Problem::sentence)
                        .toList());
    }

    private List<Fill> fills() {
        Contents contents = new Contents(work);
        return work.state().fills().stream()
                .map(fill -> fill(fill, contents.of(fill.event())))
                .toList();
    }

    private Fill fill(Logged<Filled> fill, Optional<MeanFill> mean) {
        return new Fill(
                words.say(fill.event()) + " "
                        + Format.moment(fill.at(), work.desk().zone()) + ", " + fill.by(),
                Format.reckonedGrams(MeanFill.each(fill.event())),
                mean.map(MeanFill::says).orElse(""),
                mean.filter(one -> one.verdict().warns()).isPresent());
    }

    /** Gates name materials by their keys; the person reads names. */
    private String says(ReleaseGate gate) {
        return work.cards().named(gate.says(), work.materialKeys());
    }

    private List<Choice> vessels() {
        return work.state().openVessels().stream()
                .map(vessel -> new Choice(
                        vessel.name(),
                        vessel.name() + " · " + Masses.shown(vessel.mixture().net()) + " g in it"))
                .toList();
    }

    private String pack() {
        return work.state().fills().stream()
                .reduce((earlier, later) -> later)
                .map(fill -> fill.event().pack())
                .orElse(work.product().brief().pack());
    }

    private static Yielded yielded(Yield yield) {
        return new Yielded(
                Masses.shown(yield.added()),
                Masses.shown(yield.evaporated()),
                Masses.shown(yield.filled()),
                percent(yield.filledPercent()),
                Masses.shown(yield.retained()),
                Masses.shown(yield.samples()),
                Masses.shown(yield.handedOver()),
                Masses.shown(yield.unaccounted()),
                percent(yield.lossPercent()));
    }

    private static String percent(Optional<BigDecimal> percent) {
        return percent.map(p -> Format.decimal(p, 1)).orElse("");
    }
}
