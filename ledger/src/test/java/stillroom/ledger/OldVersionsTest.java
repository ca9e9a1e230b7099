package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.formula.Product;

/** Copies that earlier versions wrote are opened by this one, with everything in them. */
final class OldVersionsTest {
    @TempDir
    Path folder;

    @Test
    void aCopyOfSchemaFourOpensWithItsProductsAndUnbrokenLogs() throws IOException {
        Path copy = folder.resolve("copy.db");
        try (InputStream packed = OldVersionsTest.class.getResourceAsStream("/versions/schema-4.db.gz");
                GZIPInputStream file = new GZIPInputStream(packed)) {
            Files.copy(file, copy);
        }
        Ledger.restore(copy, folder.resolve("home"));
        try (Ledger ledger = Workbench.open(folder.resolve("home"))) {
            assertThat(ledger.products().products())
                    .extracting(Product::name)
                    .containsExactlyInAnyOrder(
                            "Foaming hand wash",
                            "Lactic acid toner",
                            "Hand lotion",
                            "Hair conditioner",
                            "Calendula balm");
            int entries = 0;
            for (long batch = 1; batch <= 4; batch++) {
                assertThat(ledger.batches().firstAltered(batch)).isEmpty();
                entries += ledger.batches().log(batch).size();
                assertThat(BatchState.of(ledger.batches().log(batch)).plan()).isPresent();
            }
            assertThat(entries).isEqualTo(76);
        }
    }
}
