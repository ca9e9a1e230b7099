package stillroom.desk.labels;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Judgement;
import stillroom.desk.shell.LotsUsed;
import stillroom.formulary.batch.AsMade;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.label.Label;
import stillroom.formulary.label.LabelDifference;
import stillroom.formulary.label.LabelInput;
import stillroom.formulary.label.LabelSheet;
import stillroom.formulary.material.MaterialBook;
import stillroom.ledger.Ledger;
import stillroom.ledger.workshop.Workshop;

/** Puts labels together: of a version, and of a batch of it. */
public final class LabelView {
    private final Desk desk;
    private final Product product;
    private final FormulaVersion version;
    private final MaterialBook book;

    public LabelView(Desk desk, Product product, FormulaVersion version) {
        this.desk = desk;
        this.product = product;
        this.version = version;
        Ledger ledger = desk.ledger();
        this.book = ledger.materials().book(version);
    }

    /** The sheet as it was set up, or one to begin with: that of an earlier version, or an empty one. */
    public LabelSheet sheet() {
        Ledger ledger = desk.ledger();
        return ledger.labels()
                .of(product.id(), version.number())
                .or(() -> ledger.labels().before(product.id(), version.number()))
                .orElseGet(() -> LabelSheet.named(product.name()));
    }

    /** The label of the version; with a batch code on it where there is one. */
    public Label label(String batchCode) {
        return Judgement.label(desk, Subjects.of(version.formula(), product.brief()), book, input(batchCode));
    }

    /** The label that a batch would get from what was really made. */
    private Label label(BatchState state) {
        AsMade made = AsMade.of(state, version.formula(), book);
        MaterialBook used =
                LotsUsed.book(desk.ledger(), state, version.formula(), book).book();
        return Judgement.label(desk, made.subject(product.brief(), version.formula(), state), used, input(""));
    }

    /** How the label of what was made departs from the version's, one sentence each; empty where it fits. */
    public List<String> differences(BatchState state) {
        return LabelDifference.between(label(""), label(state)).sentences();
    }

    /** All that keeps the label of a batch from being printed and stuck on: what it lacks, and how it departs. */
    public List<String> open(BatchState state, String batchCode) {
        List<String> missing = input(batchCode).missing();
        List<String> open = new ArrayList<>();
        if (!missing.isEmpty()) {
            open.add("it lacks " + String.join(", ", missing));
        }
        open.addAll(differences(state));
        return open;
    }

    /** All that stands on the label besides the formula, with the workshop's responsible person and a batch code. */
    public LabelInput input(String batchCode) {
        LabelInput sheet = sheet().input();
        return new LabelInput(
                sheet.productName(),
                sheet.function(),
                sheet.netContent(),
                responsiblePerson(desk.ledger().settings().read()),
                batchCode,
                sheet.language(),
                sheet.durability(),
                sheet.precautions());
    }

    private static String responsiblePerson(Workshop workshop) {
        List<String> lines = new ArrayList<>();
        lines.add(workshop.responsiblePerson());
        lines.addAll(workshop.addressLines());
        return String.join(", ", lines.stream().filter(line -> !line.isBlank()).toList());
    }

    public LocalDate asOf() {
        return desk.today();
    }

    Product product() {
        return product;
    }

    FormulaVersion version() {
        return version;
    }

    /** The version of a product in the ledger, if both exist. */
    public static Optional<LabelView> find(Desk desk, long productId, int number) {
        Ledger ledger = desk.ledger();
        return ledger.products()
                .product(productId)
                .flatMap(product -> ledger.products()
                        .version(productId, number)
                        .map(version -> new LabelView(desk, product, version)));
    }
}
