package stillroom.desk.batches.made;

import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchHead;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.LogWords;
import stillroom.desk.batches.made.CarryPage.LineCarried;
import stillroom.desk.batches.made.CarryPage.PhaseCarried;
import stillroom.desk.batches.premix.PremixDrawers;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.formulary.batch.AsMade;
import stillroom.formulary.batch.CarriedFormula;
import stillroom.formulary.batch.PremixBack;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Line;
import stillroom.ledger.formula.ProductShelf;

/** Carries what was made into a new version of the formula. */
final class Carrying {
    private final BatchWork work;
    private final int decimals;
    private final boolean weighed;
    private final Formula carried;

    Carrying(BatchWork work) {
        this.work = work;
        this.decimals = work.desk().ledger().settings().read().decimalsShown();
        AsMade made = AsMade.of(work.state(), work.formula(), work.book());
        this.weighed = made.added().signum() > 0;
        AsMade materials =
                new PremixBack(work.formula(), work.madeBook().book(), new PremixDrawers(work.desk()).keys()).of(made);
        this.carried = new CarriedFormula(materials, work.formula(), work.state(), work.book()).at(decimals);
    }

    /** Whether anything is there to be carried. */
    boolean isEmpty() {
        return !weighed;
    }

    CarryPage page(Frame frame) {
        List<PhaseCarried> phases = carried.phases().stream()
                .map(phase -> new PhaseCarried(
                        phase.name(), phase.lines().stream().map(this::line).toList()))
                .toList();
        String basis = work.batch().version().map(number -> "version " + number).orElse("free-hand work");
        return new CarryPage(frame, BatchHead.of(work), basis, phases, why());
    }

    private LineCarried line(Line line) {
        String before = work.formula().line(line.id()).map(this::amount).orElse("");
        String after = amount(line);
        return new LineCarried(work.cards().name(line.materialKey()), before, after, !before.equals(after));
    }

    private String amount(Line line) {
        Amount amount = line.amount();
        return amount.match(
                fixed -> Format.percent(fixed.percent(), decimals) + " %",
                () -> "q.s. to 100",
                reading -> Format.percent(reading.expected(), decimals) + " % ("
                        + Format.percent(reading.range().low(), decimals) + " to "
                        + Format.percent(reading.range().high(), decimals) + " %) up to the "
                        + LogWords.kind(reading.reading()));
    }

    private String why() {
        return "As made in batch " + work.batch().code();
    }

    /** Begins the version; the same one again where it was begun from this batch already and not changed since. */
    FormulaVersion begin() {
        ProductShelf shelf = work.desk().ledger().products();
        long product = work.batch().productId();
        return work.desk().ledger().together(() -> {
            Optional<FormulaVersion> same = shelf.newest(product)
                    .filter(newest -> newest.why().equals(why()))
                    .filter(newest -> newest.formula().equals(carried));
            return same.orElseGet(() -> shelf.newVersion(
                    product, work.batch().version(), carried, why(), work.desk().now()));
        });
    }
}
