package stillroom.desk.batches.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.Cards;
import stillroom.desk.batches.Masses;
import stillroom.desk.batches.PhWords;
import stillroom.desk.shell.Choice;
import stillroom.formulary.batch.BatchEvent.Poured;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.batch.Mend;
import stillroom.formulary.batch.PourCautions;
import stillroom.formulary.batch.Vessel;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Grams;

/** The panels that weigh: a line of the plan, a correction, free hand. */
final class Weighing {
    private final BatchWork work;
    private final String vessel;
    private final Cards cards;
    private final List<Balance> balances;

    Weighing(BatchWork work, String vessel) {
        this.work = work;
        this.vessel = vessel;
        this.cards = work.cards();
        this.balances = work.desk().ledger().equipment().balances();
    }

    Panel.Weigh line(PlannedLine line, String meanwhile) {
        String key = line.materialKey();
        Lots lots = new Lots(work, key);
        return new Panel.Weigh(
                line.toReading() ? "Add " + cards.name(key) : "Weigh " + cards.name(key),
                key,
                cards.name(key),
                cards.inci(key),
                withVessel(line),
                Purposes.of(work, line).name(),
                Optional.of(target(line)),
                lots.choices(),
                lots.suggested(Optional.of(line.lineId())),
                balanceChoices(),
                line.balance(),
                meanwhile,
                "",
                "",
                Scan.NOTHING,
                live());
    }

    Panel.Weigh free(String key, Purpose purpose, String meanwhile) {
        Lots lots = new Lots(work, key);
        return new Panel.Weigh(
                "Add " + cards.name(key),
                key,
                cards.name(key),
                cards.inci(key),
                cautions(key, Grams.ZERO),
                purpose.name(),
                Optional.empty(),
                lots.choices(),
                lots.suggested(Optional.empty()),
                balanceChoices(),
                lastBalance(),
                meanwhile,
                "",
                Purposes.movesPh(purpose) ? PhWords.standing(work) : "",
                Scan.NOTHING,
                live());
    }

    Panel.Settle over(PlannedLine line) {
        LineTarget target = new LineTarget(work, balances, line);
        Mends mends = new Mends(work, vessel);
        List<Mend> ways = mends.of(line.lineId(), balances);
        return new Panel.Settle(
                cards.name(line.materialKey()) + " is over",
                cards.name(line.materialKey()),
                line.materialKey(),
                target(line),
                target.grams(target.over()),
                new Lots(work, line.materialKey()).lastPoured(line.lineId()).orElse(""),
                line.balance(),
                ways.stream()
                        .filter(Mend.TakeBack.class::isInstance)
                        .map(way -> target.grams(((Mend.TakeBack) way).mass()))
                        .findFirst()
                        .orElse(""),
                ways.stream().map(way -> mends.shown(way, line.lineId())).toList(),
                Kept.of(work));
    }

    /** What was poured in place of the line's material, or by mistake. */
    Panel.Instead instead(PlannedLine line) {
        return new Panel.Instead(
                "Another material was poured",
                line.lineId(),
                cards.name(line.materialKey()),
                new Picking(work, vessel).all(),
                balanceChoices(),
                line.balance());
    }

    /** Whatever is in the vessel may be taken back out of it. */
    Panel.Back back(String material) {
        List<Choice> inside = work.state().vessel(vessel).stream()
                .flatMap(v -> v.mixture().contents().stream())
                .map(content -> content.materialKey())
                .distinct()
                .map(key -> new Choice(key, cards.name(key)))
                .toList();
        return new Panel.Back("Take back out of " + vessel, inside, material, lastBalance());
    }

    /** What to mind, and whether the balance bears the vessel with it. */
    private List<String> withVessel(PlannedLine line) {
        List<String> said = new ArrayList<>(cautions(line.materialKey(), line.target()));
        Optional<Grams> gross = work.state()
                .vessel(vessel)
                .flatMap(Vessel::expectedGross)
                .map(now -> now.plus(line.target()).minus(work.state().poured(line.lineId())));
        balances.stream()
                .filter(balance -> balance.name().equals(line.balance()))
                .filter(balance -> gross.filter(all -> all.compareTo(balance.maximum()) > 0)
                        .isPresent())
                .forEach(balance -> said.add("With " + vessel + " on it, " + balance.name() + " would show "
                        + Masses.shown(gross.orElseThrow()) + " g, above its " + balance.maximum()
                        + " g: weigh it beside, and pour it in."));
        return said;
    }

    private List<String> cautions(String key, Grams mass) {
        Optional<Vessel> into = work.state().vessel(vessel);
        List<String> said = cards.card(key)
                .flatMap(card -> into.map(v -> PourCautions.of(v, card, mass, work.book())))
                .orElseGet(() -> cards.cautions(key));
        return said.stream()
                .filter(caution -> !caution.isBlank())
                .map(caution -> caution.substring(0, 1).toUpperCase(Locale.ROOT) + caution.substring(1))
                .toList();
    }

    private List<Choice> balanceChoices() {
        List<Choice> choices = new ArrayList<>();
        balances.forEach(balance -> choices.add(new Choice(
                balance.name(), balance.name() + " · " + balance.step() + " g steps, to " + balance.maximum() + " g")));
        return choices;
    }

    private List<Panel.Live> live() {
        return balances.stream()
                .flatMap(balance -> balance.live().stream()
                        .map(line ->
                                new Panel.Live(balance.name(), !line.device().isEmpty(), line.baud())))
                .toList();
    }

    private String lastBalance() {
        return work.state().pours().stream()
                .map(Logged::event)
                .reduce((earlier, later) -> later)
                .map(Poured::balance)
                .orElse(balances.isEmpty() ? "" : balances.get(0).name());
    }

    private Panel.Target target(PlannedLine line) {
        return new LineTarget(work, balances, line).shown();
    }
}
