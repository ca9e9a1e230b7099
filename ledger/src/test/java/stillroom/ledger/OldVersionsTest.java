package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.formula.Product;
import stillroom.formulary.hygiene.Cleaning;

/** Copies that earlier versions wrote are opened by this one, with everything in them. */
final class OldVersionsTest {
    @TempDir
    Path folder;

    @Test
    void aCopyOfSchemaFourOpensWithItsProductsAndUnbrokenLogs() throws IOException {
        restore("schema-4");
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

    private void restore(String version) throws IOException {
        Path copy = folder.resolve("copy.db");
        try (InputStream packed = OldVersionsTest.class.getResourceAsStream("/versions/" + version + ".db.gz");
                GZIPInputStream file = new GZIPInputStream(packed)) {
            Files.copy(file, copy);
        }
        Ledger.restore(copy, folder.resolve("home"));
    }

    /** With trials, curves, containers, documents, vessels, pictures, a complaint, a class that was begun, tolerances. */
    @Test
    void aCopyOfSchemaTenOpensWithAllThatLiesInDrawersAndItsPictures() throws IOException {
        restore("schema-10");
        try (Ledger ledger = Workbench.open(folder.resolve("home"))) {
            Map<String, Integer> found = new TreeMap<>();
            KeptKinds.drawers().forEach((kind, type) -> {
                int records = ledger.drawer(kind, type).list().size();
                if (records > 0) {
                    found.put(kind, records);
                }
            });
            assertThat(found)
                    .containsOnlyKeys(
                            "class",
                            "hand-out",
                            "pack",
                            "pack-lot",
                            "paper",
                            "tolerances",
                            "tool",
                            "trial-set",
                            "viscosity-curve",
                            "water-lot")
                    .containsEntry("tool", 5)
                    .containsEntry("paper", 3);
            assertThat(ledger.happenings("tool", Cleaning.class).newest()).isNotEmpty();
            assertThat(ledger.meters().calibrations()).hasSize(6);
            List<Long> batches = ledger.batches().ids();
            assertThat(batches).hasSize(14);
            List<BatchEvent> events = new ArrayList<>();
            for (long batch : batches) {
                assertThat(ledger.batches().firstAltered(batch)).isEmpty();
                ledger.batches().log(batch).forEach(entry -> events.add(entry.event()));
            }
            assertThat(events).hasSize(101);
            assertThat(events)
                    .filteredOn(BatchEvent.Pictured.class::isInstance)
                    .hasSize(3)
                    .allSatisfy(event -> assertThat(
                                    ledger.attachments().get(((BatchEvent.Pictured) event).attachment()))
                            .isPresent());
        }
    }
}
