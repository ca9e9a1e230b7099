package stillroom.desk.batches.fill;

import java.math.BigDecimal;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.labels.LabelView;
import stillroom.desk.labels.NetContent;
import stillroom.desk.shell.LotsUsed;
import stillroom.formulary.batch.BatchEvent.Filled;
import stillroom.formulary.batch.BatchEvent.ReadingTaken;
import stillroom.formulary.batch.DeclaredContent;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.batch.MeanFill;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.quantity.Grams;

/** What the containers of a batch are declared to hold, and what a filling put into them. */
final class Contents {
    /** A container may well be half as large again as what it is declared to hold; a larger one is another size. */
    private static final BigDecimal HEADROOM = new BigDecimal("1.5");

    private final Optional<DeclaredContent> onLabel;
    private final Optional<Double> density;
    private final Optional<Double> expected;

    Contents(BatchWork work) {
        onLabel = work.version()
                .map(version -> new LabelView(work.desk(), work.product(), version).sheet())
                .flatMap(sheet -> NetContent.read(sheet.input().netContent()));
        density = work.state().readings(ReadingKind.DENSITY).stream()
                .map(Logged::event)
                .map(ReadingTaken::value)
                .flatMap(Optional::stream)
                .filter(value -> value > 0)
                .reduce((earlier, later) -> later);
        expected = LotsUsed.density(work.desk().ledger(), work.state(), work.formula(), work.book());
    }

    /** As last read, as filled [g/ml]. */
    Optional<Double> density() {
        return density;
    }

    /** By what is in it, where its densities are known [g/ml]. */
    Optional<Double> expected() {
        return expected;
    }

    /** What the label declares, as a mass [g]. */
    Optional<Grams> declaredGrams() {
        return onLabel.flatMap(content -> content.grams(density));
    }

    /** The mean beside the declared content; none where neither label nor container says one. */
    Optional<MeanFill> of(Filled filled) {
        Optional<DeclaredContent> onPack = NetContent.read(filled.pack());
        Optional<DeclaredContent> declared = onLabel.filter(label ->
                        onPack.filter(pack -> isAnotherSize(pack, label)).isEmpty())
                .or(() -> onPack);
        return declared.map(content -> MeanFill.of(filled, content, density, expected));
    }

    private static boolean isAnotherSize(DeclaredContent pack, DeclaredContent label) {
        return pack.figure().compareTo(label.figure()) < 0
                || pack.figure().compareTo(label.figure().multiply(HEADROOM)) > 0;
    }
}
