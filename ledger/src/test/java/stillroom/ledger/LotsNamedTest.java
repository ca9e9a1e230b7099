package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchEvent.LotPart;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.batch.LotUse;

/** Stock follows the lots that are said after a weighing. */
class LotsNamedTest {
    @TempDir
    Path folder = Path.of("");

    @Test
    void stockGoesToTheLotsThatWereReallyPoured() {
        try (Ledger ledger = Workbench.open(folder)) {
            ledger.lots().add(Workbench.lot("A", "glycerin", "100"));
            ledger.lots().add(Workbench.lot("B", "glycerin", "100"));
            Batch batch = Workbench.batch(ledger);
            append(ledger, batch, 1, pour(Optional.of("A"), "30"));
            append(ledger, batch, 2, pour(Optional.empty(), "5"));
            assertThat(stock(ledger, "A")).isEqualTo(Grams.of("70"));

            append(
                    ledger,
                    batch,
                    3,
                    new BatchEvent.LotsNamed(
                            1, List.of(new LotPart("A", Grams.of("12.5")), new LotPart("B", Grams.of("17.5"))), ""));
            append(ledger, batch, 4, new BatchEvent.LotsNamed(2, List.of(new LotPart("B", Grams.of("5"))), ""));
            assertThat(stock(ledger, "A")).isEqualTo(Grams.of("87.5"));
            assertThat(stock(ledger, "B")).isEqualTo(Grams.of("77.5"));
            assertThat(ledger.batches().holding("B")).extracting(LotUse::mass).containsExactly(Grams.of("22.5"));

            append(ledger, batch, 5, new BatchEvent.LotsNamed(1, List.of(new LotPart("B", Grams.of("30"))), ""));
            assertThat(stock(ledger, "A")).isEqualTo(Grams.of("100"));
            assertThat(stock(ledger, "B")).isEqualTo(Grams.of("65"));

            append(ledger, batch, 6, new BatchEvent.Struck(1, "never poured"));
            assertThat(stock(ledger, "A")).isEqualTo(Grams.of("100"));
            assertThat(stock(ledger, "B")).isEqualTo(Grams.of("95"));

            append(ledger, batch, 7, new BatchEvent.Struck(6, "it was"));
            append(ledger, batch, 8, new BatchEvent.Struck(5, "as said first"));
            assertThat(stock(ledger, "A")).isEqualTo(Grams.of("87.5"));
            assertThat(stock(ledger, "B")).isEqualTo(Grams.of("77.5"));
        }
    }

    private static Grams stock(Ledger ledger, String code) {
        return ledger.lots().lot(code).orElseThrow().onHand();
    }

    private static BatchEvent pour(Optional<String> lot, String grams) {
        return new BatchEvent.Poured(
                "pot", Optional.empty(), "glycerin", lot, Grams.of(grams), Purpose.LINE, "scale", "", "");
    }

    private static void append(Ledger ledger, Batch batch, int number, BatchEvent event) {
        ledger.batches().append(batch.id(), "request-" + number, Instant.EPOCH, "Ada", event);
    }
}
