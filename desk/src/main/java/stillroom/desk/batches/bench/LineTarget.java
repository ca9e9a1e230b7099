package stillroom.desk.batches.bench;

import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.LogWords;
import stillroom.desk.batches.PhWords;
import stillroom.desk.shell.Format;
import stillroom.formulary.batch.BatchEvent.ReadingTaken;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.PercentRange;

/** What a line asks for, in figures. */
final class LineTarget {
    private final BatchWork work;
    private final PlannedLine line;
    private final Grams poured;
    private final Optional<Balance> balance;

    LineTarget(BatchWork work, List<Balance> balances, PlannedLine line) {
        this.work = work;
        this.line = line;
        this.poured = work.state().poured(line.lineId());
        this.balance =
                balances.stream().filter(b -> b.name().equals(line.balance())).findFirst();
    }

    Grams over() {
        return poured.minus(line.target());
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
                unstated() ? "" : grams(line.target()),
                grams(line.tolerance()),
                poured.isZero() ? "" : grams(poured),
                grams(open),
                toReading(),
                readNow(),
                state(open),
                QsFigure.allowed(work, line).map(Grams::toString).orElse(""),
                DeviationBar.of(line.target().doubleValue(), line.tolerance().doubleValue(), poured.doubleValue()));
    }

    /** Up to a reading, and nobody has said how much that takes. */
    private boolean unstated() {
        return line.toReading() && line.target().isZero();
    }

    private String state(Grams open) {
        if (poured.isZero()) {
            return "Nothing is in yet.";
        }
        if (line.toReading()) {
            return grams(poured) + " g is in" + (unstated() ? "." : ", " + grams(line.target()) + " g expected.");
        }
        if (QsFigure.doubtful(work, line, poured)) {
            return "Within the wide tolerance of q.s., but " + grams(open.abs()) + " g "
                    + (open.signum() > 0 ? "short" : "over") + ": check the figure.";
        }
        if (open.abs().compareTo(line.tolerance()) <= 0) {
            return "Within tolerance.";
        }
        return open.signum() > 0 ? grams(open) + " g short." : grams(open.negated()) + " g over.";
    }

    private String toReading() {
        return amount().map(this::sentence).orElse("");
    }

    private Optional<Amount.ToReading> amount() {
        return work.formula()
                .line(line.lineId())
                .map(Line::amount)
                .filter(Amount.ToReading.class::isInstance)
                .map(Amount.ToReading.class::cast);
    }

    /** Some is in, and nothing was read since. */
    private String readNow() {
        int lastPour = work.state().pours().stream()
                .filter(pour ->
                        pour.event().lineId().filter(line.lineId()::equals).isPresent())
                .mapToInt(Logged::number)
                .max()
                .orElse(0);
        return amount().map(Amount.ToReading::reading)
                .filter(kind -> poured.signum() > 0)
                .filter(kind -> work.state().readings(kind).stream().noneMatch(read -> read.number() > lastPour))
                .map(Enum::name)
                .orElse("");
    }

    private String sentence(Amount.ToReading amount) {
        if (unstated()) {
            return "Up to the " + LogWords.kind(amount.reading())
                    + ": how much that takes is not stated. Add a little, stir, read, and add again."
                    + lastRead(amount);
        }
        PercentRange range = amount.range();
        Grams batch = work.plan().orElseThrow().batch();
        String said = "Up to the " + LogWords.kind(amount.reading()) + ": expected " + grams(line.target())
                + " g, usually " + Format.figure(range.low().of(batch).doubleValue(), 1) + " to "
                + Format.figure(range.high().of(batch).doubleValue(), 1)
                + " g. Add a part, stir, read, and add again.";
        return said + lastRead(amount);
    }

    private String lastRead(Amount.ToReading amount) {
        String standing = amount.reading() == ReadingKind.PH ? PhWords.standing(work) : "";
        if (!standing.isEmpty()) {
            return " " + standing;
        }
        return work.state().readings(amount.reading()).stream()
                .map(Logged::event)
                .reduce((earlier, later) -> later)
                .flatMap(ReadingTaken::value)
                .map(value -> " Last read: " + LogWords.plain(value) + ".")
                .orElse("");
    }
}
