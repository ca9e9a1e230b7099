package stillroom.desk.batches.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.Cards;
import stillroom.desk.batches.LogWords;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Format;
import stillroom.formulary.batch.BatchEvent.Poured;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.batch.BatchEvent.ReadingTaken;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.batch.Mend;
import stillroom.formulary.batch.PourCautions;
import stillroom.formulary.batch.Vessel;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Line;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.PercentRange;

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
                cautions(key, line.target()),
                Purposes.of(work, line).name(),
                Optional.of(target(line)),
                lots.choices(),
                lots.suggested(Optional.of(line.lineId())),
                balanceChoices(),
                line.balance(),
                meanwhile);
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
                meanwhile);
    }

    Panel.Settle over(PlannedLine line) {
        Target target = new Target(line);
        Mends mends = new Mends(work);
        List<Mend> ways = mends.of(line.lineId(), balances);
        return new Panel.Settle(
                cards.name(line.materialKey()) + " is over",
                cards.name(line.materialKey()),
                line.materialKey(),
                target(line),
                target.grams(target.poured.minus(line.target())),
                new Lots(work, line.materialKey()).lastPoured(line.lineId()).orElse(""),
                line.balance(),
                ways.stream()
                        .filter(Mend.TakeBack.class::isInstance)
                        .map(way -> target.grams(((Mend.TakeBack) way).mass()))
                        .findFirst()
                        .orElse(""),
                ways.stream().map(mends::shown).toList());
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

    private String lastBalance() {
        return work.state().pours().stream()
                .map(Logged::event)
                .reduce((earlier, later) -> later)
                .map(Poured::balance)
                .orElse(balances.isEmpty() ? "" : balances.get(0).name());
    }

    private Panel.Target target(PlannedLine line) {
        return new Target(line).shown();
    }

    /** What a line asks for, in figures. */
    private final class Target {
        private final PlannedLine line;
        private final Grams poured;
        private final Optional<Balance> balance;

        Target(PlannedLine line) {
            this.line = line;
            this.poured = work.state().poured(line.lineId());
            this.balance = balances.stream()
                    .filter(b -> b.name().equals(line.balance()))
                    .findFirst();
        }

        String grams(Grams mass) {
            return balance.filter(b -> b.step().value().scale() >= mass.value().scale())
                    .map(b -> Format.grams(mass, b.step()))
                    .orElseGet(() -> Format.grams(mass));
        }

        Panel.Target shown() {
            Grams open = line.target().minus(poured);
            return new Panel.Target(
                    line.lineId(),
                    grams(line.target()),
                    grams(line.tolerance()),
                    poured.isZero() ? "" : grams(poured),
                    grams(open),
                    toReading(),
                    state(open),
                    DeviationBar.of(
                            line.target().doubleValue(), line.tolerance().doubleValue(), poured.doubleValue()));
        }

        private String state(Grams open) {
            if (poured.isZero()) {
                return "Nothing is in yet.";
            }
            if (line.toReading()) {
                return grams(poured) + " g are in.";
            }
            if (open.abs().compareTo(line.tolerance()) <= 0) {
                return "Within tolerance.";
            }
            return open.signum() > 0 ? grams(open) + " g short." : grams(open.negated()) + " g over.";
        }

        private String toReading() {
            Optional<Amount.ToReading> amount = work.formula()
                    .line(line.lineId())
                    .map(Line::amount)
                    .filter(Amount.ToReading.class::isInstance)
                    .map(Amount.ToReading.class::cast);
            return amount.map(this::sentence).orElse("");
        }

        private String sentence(Amount.ToReading amount) {
            PercentRange range = amount.range();
            Grams batch = work.plan().orElseThrow().batch();
            String said = "Up to the " + LogWords.kind(amount.reading()) + ": expected " + grams(line.target())
                    + " g, usually " + Format.figure(range.low().of(batch).doubleValue(), 1) + " to "
                    + Format.figure(range.high().of(batch).doubleValue(), 1)
                    + " g. Add a part, stir, read, and add again.";
            return said + lastRead(amount);
        }

        private String lastRead(Amount.ToReading amount) {
            return work.state().readings(amount.reading()).stream()
                    .map(Logged::event)
                    .reduce((earlier, later) -> later)
                    .flatMap(ReadingTaken::value)
                    .map(value -> " Last read: " + LogWords.plain(value) + ".")
                    .orElse("");
        }
    }
}
