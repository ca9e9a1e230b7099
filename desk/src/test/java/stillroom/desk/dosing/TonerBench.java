package stillroom.desk.dosing;

import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import stillroom.desk.OpenDesk;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Interval;
import stillroom.ledger.Ledger;
import stillroom.ledger.store.Saved;

/** A kilogram of a toner preserved with benzoate stands in a kettle and is to come down to pH 5; all invented. */
final class TonerBench implements AutoCloseable {
    static final String ACID = "citric-acid-50";

    private final OpenDesk desk;
    private final Product product;
    private final Batch batch;

    private TonerBench(OpenDesk desk, Product product, Batch batch) {
        this.desk = desk;
        this.product = product;
        this.batch = batch;
    }

    static TonerBench in(Path folder) {
        OpenDesk desk = OpenDesk.in(folder);
        Ledger ledger = desk.ledger();
        ledger.equipment()
                .writeBalances(
                        List.of(new Balance("Fine scale", Grams.of("0.01"), Optional.empty(), Grams.of("2000"))));
        Brief brief = new Brief(
                ProductType.TONER,
                Set.of(Brief.People.ADULTS),
                "face",
                "",
                Optional.of(new Interval(4.8, 5.2)),
                Optional.of(5.0),
                Optional.empty(),
                List.of(),
                "",
                "EU");
        Product product = ledger.products().add("Toner", brief, "");
        FormulaVersion draft =
                ledger.products().newVersion(product.id(), Optional.empty(), formula(), "first", OpenDesk.NOW);
        FormulaVersion kept = ((Saved.Done<FormulaVersion>)
                        ledger.products().keep(product.id(), draft.number(), draft.edit()))
                .value();
        TonerBench bench = new TonerBench(desk, product, open(ledger, product, kept, "261125-1"));
        bench.make(bench.batch);
        return bench;
    }

    private static Batch open(Ledger ledger, Product product, FormulaVersion kept, String code) {
        return ledger.batches()
                .open(
                        product.id(),
                        Optional.of(kept.number()),
                        code,
                        OpenDesk.NOW.atZone(java.time.ZoneOffset.UTC).toLocalDate())
                .orElseThrow();
    }

    private static Formula formula() {
        return new Formula(List.of(new Phase(
                "a",
                "Water phase",
                List.of(
                        new Line("l1", "water-purified", new Amount.ToHundred(), ""),
                        new Line("l2", "sodium-benzoate", Amount.fixed("0.5"), "")),
                List.of())));
    }

    /** A second batch of the same product, corrected with 4 g from 8.1 to 5.0. */
    void earlierBatch() {
        FormulaVersion kept = desk.ledger().products().version(product.id(), 1).orElseThrow();
        Batch before = open(desk.ledger(), product, kept, "261101-1");
        make(before);
        append(before, reading(8.1));
        append(before, pour(ACID, "4", Purpose.CORRECTION_ACID));
        append(before, reading(5.02));
    }

    private void make(Batch made) {
        append(
                made,
                new BatchEvent.VesselReady(
                        "Kettle", Optional.of(Grams.of("500")), Optional.empty(), "washed", List.of()));
        append(made, pour("water-purified", "995", Purpose.LINE));
        append(made, pour("sodium-benzoate", "5", Purpose.LINE));
    }

    static BatchEvent pour(String material, String grams, Purpose purpose) {
        return new BatchEvent.Poured(
                "Kettle", Optional.empty(), material, Optional.empty(), Grams.of(grams), purpose, "Fine scale", "", "");
    }

    static BatchEvent reading(double pH) {
        return new BatchEvent.ReadingTaken(
                stillroom.formulary.formula.ReadingKind.PH,
                "Kettle",
                Optional.of(pH),
                "pH",
                "",
                Map.of("measured", "neat"));
    }

    void append(BatchEvent event) {
        append(batch, event);
    }

    void appendAfterDays(int days, BatchEvent event) {
        appendAfter(Duration.ofDays(days), event);
    }

    void appendAfter(Duration later, BatchEvent event) {
        desk.ledger()
                .batches()
                .append(batch.id(), UUID.randomUUID().toString(), OpenDesk.NOW.plus(later), "Ana", event);
    }

    private void append(Batch to, BatchEvent event) {
        desk.ledger().batches().append(to.id(), UUID.randomUUID().toString(), OpenDesk.NOW, "Ana", event);
    }

    OpenDesk desk() {
        return desk;
    }

    Product product() {
        return product;
    }

    String path() {
        return "/batches/" + batch.id();
    }

    Answer page() {
        return desk.get(path() + "/ph");
    }

    Answer page(String query) {
        return desk.get(path() + "/ph?" + query);
    }

    Answer act(String act, String... fields) {
        Map<String, String> form = new HashMap<>();
        form.put("act", act);
        form.put("requestId", UUID.randomUUID().toString());
        form.put("by", "Ana");
        form.put("vessel", "Kettle");
        form.put("corrector", ACID);
        form.put("lot", "");
        form.put("balance", "Fine scale");
        form.put("electrode", "");
        for (int i = 0; i < fields.length; i += 2) {
            form.put(fields[i], fields[i + 1]);
        }
        return desk.post(path() + "/ph" + (act.equals("reserve") ? "/reserve" : ""), form);
    }

    List<LogEntry> log() {
        return desk.ledger().batches().log(batch.id());
    }

    @Override
    public void close() {
        desk.close();
    }
}
