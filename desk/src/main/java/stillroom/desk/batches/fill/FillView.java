package stillroom.desk.batches.fill;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import stillroom.desk.batches.BatchHead;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.LogWords;
import stillroom.desk.batches.Who;
import stillroom.desk.batches.fill.FillPage.Gate;
import stillroom.desk.batches.fill.FillPage.Yielded;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.Problem;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.batch.ReleaseGate;
import stillroom.formulary.batch.Yield;
import stillroom.formulary.formula.Line;
import stillroom.formulary.quantity.Grams;

/** Puts the page of filling and deciding together. */
final class FillView {
    private static final int MASS_DECIMALS = 2;
    private static final Set<String> GENERAL = Set.of("act", "batch", "vessel", "entry");
    private static final Map<String, String> TITLES = Map.of(
            "ph", "pH in its band",
            "deviations", "Deviations explained",
            "steps", "Procedure logged",
            "label", "Label fits what was made",
            "yield", "Yield within limits",
            "clean", "Vessels clean",
            "record", "Record complete");

    private final BatchWork work;
    private final LogWords words;

    FillView(BatchWork work) {
        this.work = work;
        this.words = new LogWords(work.cards(), work.desk().zone());
    }

    FillPage page(Frame frame, Optional<Input> input, List<ReleaseGate> gates) {
        Typed typed = input.map(Input::typed).orElse(Typed.NOTHING);
        return new FillPage(
                frame,
                BatchHead.of(work),
                typed,
                vessels(),
                pack(),
                work.state().fills().stream()
                        .map(fill -> words.say(fill.event()) + " "
                                + Format.moment(fill.at(), work.desk().zone()) + ", " + fill.by())
                        .toList(),
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

    /** Gates name materials by their keys; the person reads names. */
    private String says(ReleaseGate gate) {
        List<String> keys = Stream.concat(
                        work.formula().lines().stream().map(Line::materialKey),
                        work.state().pours().stream().map(pour -> pour.event().materialKey()))
                .distinct()
                .sorted(Comparator.comparing(String::length).reversed())
                .toList();
        String says = gate.says();
        for (String key : keys) {
            says = says.replace(key, work.cards().name(key));
        }
        return says;
    }

    private List<Choice> vessels() {
        return work.state().openVessels().stream()
                .map(vessel -> new Choice(
                        vessel.name(),
                        vessel.name() + " · " + grams(vessel.mixture().net()) + " g in it"))
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
                grams(yield.added()),
                grams(yield.evaporated()),
                grams(yield.filled()),
                percent(yield.filledPercent()),
                grams(yield.retained()),
                grams(yield.samples()),
                grams(yield.handedOver()),
                grams(yield.unaccounted()),
                percent(yield.lossPercent()));
    }

    private static String percent(Optional<BigDecimal> percent) {
        return percent.map(p -> Format.decimal(p, 1)).orElse("");
    }

    private static String grams(Grams mass) {
        int own = Math.max(0, mass.value().stripTrailingZeros().scale());
        return Format.decimal(mass.value(), Math.min(MASS_DECIMALS, own));
    }
}
