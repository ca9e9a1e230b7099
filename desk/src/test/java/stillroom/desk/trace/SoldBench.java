package stillroom.desk.trace;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import stillroom.desk.OpenDesk;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.material.Lot;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Money;
import stillroom.formulary.quantity.Price;

/** A workshop that weighs free hand out of one booked lot of water; all invented. */
public final class SoldBench implements AutoCloseable {
    private final OpenDesk desk;
    private final Product product;

    private SoldBench(OpenDesk desk, Product product) {
        this.desk = desk;
        this.product = product;
    }

    public static SoldBench in(Path folder) {
        OpenDesk desk = OpenDesk.in(folder);
        desk.ledger()
                .lots()
                .add(new Lot(
                        "WATER-1",
                        "water-purified",
                        "S-77",
                        "Invented Waters",
                        Grams.of("5000"),
                        LocalDate.of(2026, 11, 1),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new Price(new Money(new java.math.BigDecimal("2")), Grams.of("1000"))),
                        Lot.State.RELEASED,
                        ""));
        return new SoldBench(desk, desk.ledger().products().add("Toner", Brief.of(ProductType.TONER), ""));
    }

    public OpenDesk desk() {
        return desk;
    }

    public Product product() {
        return product;
    }

    /** A batch of 100 g out of the lot, in a kettle. */
    public Batch made(String code) {
        Batch batch = desk.ledger()
                .batches()
                .open(product.id(), Optional.empty(), code, LocalDate.of(2026, 11, 25))
                .orElseThrow();
        append(
                batch,
                new BatchEvent.VesselReady(
                        "Kettle", Optional.of(Grams.of("500")), Optional.empty(), "washed", List.of()));
        append(
                batch,
                new BatchEvent.Poured(
                        "Kettle",
                        Optional.empty(),
                        "water-purified",
                        Optional.of("WATER-1"),
                        Grams.of("100"),
                        BatchEvent.Purpose.LINE,
                        "Fine scale",
                        "",
                        ""));
        return batch;
    }

    /** The same, filled into ten bottles and released. */
    public Batch released(String code) {
        Batch batch = made(code);
        append(batch, new BatchEvent.Filled("Kettle", "bottle", 10, Grams.of("99"), Optional.empty(), ""));
        append(batch, new BatchEvent.Decided(BatchEvent.Decision.RELEASED, "Ana", "", List.of()));
        return batch;
    }

    public int append(Batch batch, BatchEvent event) {
        return desk.ledger()
                .batches()
                .append(batch.id(), UUID.randomUUID().toString(), OpenDesk.NOW, "Ana", event)
                .number();
    }

    /** Posts an act to a page of a batch. */
    public Answer act(Batch batch, String page, String act, String... fields) {
        Map<String, String> form = new HashMap<>();
        form.put("act", act);
        form.put("requestId", UUID.randomUUID().toString());
        form.put("by", "Ana");
        for (int i = 0; i < fields.length; i += 2) {
            form.put(fields[i], fields[i + 1]);
        }
        return desk.post("/batches/" + batch.id() + "/" + page, form);
    }

    public BatchState state(Batch batch) {
        return BatchState.of(desk.ledger().batches().log(batch.id()));
    }

    @Override
    public void close() {
        desk.close();
    }
}
