package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Product;
import stillroom.formulary.hygiene.Tool;
import stillroom.formulary.label.LabelSheet;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Substance;
import stillroom.formulary.meter.MeterCalibration;
import stillroom.formulary.meter.PhMeter;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.export.WorkshopFile;
import stillroom.ledger.store.LedgerException;
import stillroom.ledger.workshop.Workshop;

/** The whole workshop as JSON and back. */
final class WorkshopFileTest {
    @TempDir
    Path folder;

    private Path home() {
        return folder.resolve("home");
    }

    private static byte[] export(Path home) throws IOException {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        WorkshopFile.write(home, file);
        return file.toByteArray();
    }

    private static void read(byte[] file, Path home) throws IOException {
        WorkshopFile.read(new ByteArrayInputStream(file), home);
    }

    private static void read(String file, Path home) throws IOException {
        read(file.getBytes(StandardCharsets.UTF_8), home);
    }

    /** A workshop of random records, the seed of which stands in the test's name. */
    private void fill(long seed) {
        RandomRecords random = new RandomRecords(seed);
        try (Ledger ledger = Workbench.open(home())) {
            ledger.settings().write(random.of(Workshop.class));
            for (Lot lot : random.several(Lot.class, 4)) {
                ledger.lots().add(lot);
                ledger.lots().countStock(lot.code(), Grams.of("3.5"), "counted", Workbench.MORNING, "Ana");
            }
            random.several(Material.class, 3).forEach(card -> ledger.materials().save(card));
            random.several(Substance.class, 3)
                    .forEach(substance -> ledger.materials().save(substance));
            for (int i = 0; i < 3; i++) {
                Product product = ledger.products().add("p" + i, random.of(Brief.class), "note");
                ledger.products()
                        .newVersion(product.id(), Optional.empty(), random.of(Formula.class), "why", Workbench.MORNING);
                ledger.labels().write(product.id(), 1, random.of(LabelSheet.class));
            }
            Batch batch = Workbench.batch(ledger);
            for (BatchEvent event : random.several(BatchEvent.class, 60)) {
                append(ledger, batch, event);
            }
            assertThat(ledger.batches().log(batch.id())).hasSizeGreaterThan(30);
            ledger.drawer("slip", Product.class).write("a \"key\"", random.of(Product.class));
            KeptKinds.drawers().forEach((kind, type) -> drawer(ledger, kind, type, random));
            KeptKinds.happenings().forEach((kind, type) -> happenings(ledger, kind, type, random));
            ledger.equipment().writeBalances(List.of(random.of(Balance.class)));
            random.several(PhMeter.class, 3).forEach(meter -> ledger.meters().write(meter));
            random.several(MeterCalibration.class, 3)
                    .forEach(calibration -> ledger.meters().add(calibration));
            ledger.importNames().remember("moon dust", "urea");
            ledger.attachments().put("a.jpg", new byte[] {0, 1, -1, 127, -128});
        }
    }

    private static <T extends Record> void drawer(Ledger ledger, String kind, Class<T> type, RandomRecords random) {
        List<T> records = random.several(type, 3);
        for (T record : records) {
            ledger.drawer(kind, type).write("key " + records.indexOf(record), record);
        }
        assertThat(ledger.drawer(kind, type).list()).as(kind).containsAll(records);
    }

    private static <T extends Record> void happenings(Ledger ledger, String kind, Class<T> type, RandomRecords random) {
        random.several(type, 3)
                .forEach(record -> ledger.happenings(kind, type).add("the " + kind, Workbench.MORNING, record));
    }

    /** Events drawn at random may speak of entries that do not exist; such ones the log does not take. */
    private static void append(Ledger ledger, Batch batch, BatchEvent event) {
        int entry = ledger.batches().log(batch.id()).size() + 1;
        try {
            ledger.batches().append(batch.id(), "request-" + entry, Workbench.MORNING, "Ana", event);
        } catch (IllegalArgumentException refused) {
            assertThat(refused).hasMessageContaining("entry");
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void aRandomWorkshopComesBackIdentical(long seed) throws IOException {
        fill(seed);
        byte[] file = export(home());
        Path other = folder.resolve("other");
        read(file, other);
        assertThat(new String(export(other), StandardCharsets.UTF_8))
                .isEqualTo(new String(file, StandardCharsets.UTF_8));
        try (Ledger before = Workbench.open(home());
                Ledger after = Workbench.open(other)) {
            assertThat(after.batches().log(1)).isEqualTo(before.batches().log(1));
            assertThat(after.batches().headHash(1)).isEqualTo(before.batches().headHash(1));
            assertThat(after.batches().firstAltered(1)).isEmpty();
            assertThat(after.lots().all()).isEqualTo(before.lots().all());
        }
    }

    @Test
    void whatANewerVersionWroteIsKeptAndWrittenAgain() throws IOException {
        fill(9);
        String file = new String(export(home()), StandardCharsets.UTF_8);
        String newer = file.replaceFirst("\"format\":1", "\"format\":1,\"season\":{\"x\":1.50}")
                .replaceFirst("\"tables\":\\{", "\"tables\":{\"aardvark\":[{\"a\":null,\"b\":[1e-5]}],")
                .replaceFirst("\\{\"name\":\"p0\"", "{\"name\":\"p0\"");
        int body = newer.indexOf("\"name\":\"p0\"");
        newer = newer.substring(0, body) + "\"mood\":\"<b>7\\\"\",\"depth\":7," + newer.substring(body);
        int deep = newer.indexOf("\"name\":\"p1\"", newer.indexOf("\"name\":\"p1\"") + 5);
        newer = newer.substring(0, deep) + "\"unheard\":{\"of\":2.0}," + newer.substring(deep);
        Path other = folder.resolve("other");
        read(newer, other);
        String again = new String(export(other), StandardCharsets.UTF_8);
        assertThat(again)
                .contains("\"season\":{\"x\":1.50}", "\"aardvark\":[{\"a\":null,\"b\":[1e-5]}]")
                .contains("\"mood\":\"<b>7\\\"\"", "\"depth\":7", "\"unheard\":{\"of\":2.0}");
        Path third = folder.resolve("third");
        read(again, third);
        assertThat(new String(export(third), StandardCharsets.UTF_8)).isEqualTo(again);
        try (Ledger ledger = Workbench.open(other)) {
            assertThat(ledger.products().products()).extracting(Product::name).contains("p0", "p1");
        }
    }

    /** As above, and then the records are edited here: what only the newer version knows goes along. */
    @Test
    void whatANewerVersionWroteOutlastsAnEditHere() throws IOException {
        fill(12);
        try (Ledger ledger = Workbench.open(home())) {
            ledger.drawer("tool", Tool.class)
                    .write("pot", new Tool("Pot", true, Optional.empty(), Optional.empty(), 12, ""));
        }
        String file = new String(export(home()), StandardCharsets.UTF_8);
        String newer = file.replace("{\"name\":\"Pot\"", "{\"shine\":[1,2.50],\"name\":\"Pot\"")
                .replaceAll("(\"body\":\\{\"id\":1,)", "$1\"mood\":{\"of\":\"day\"},");
        assertThat(newer).contains("shine").contains("mood");
        Path other = folder.resolve("other");
        read(newer, other);
        try (Ledger ledger = Workbench.open(other)) {
            Tool pot = ledger.drawer("tool", Tool.class).read("pot").orElseThrow();
            ledger.drawer("tool", Tool.class)
                    .write("pot", new Tool(pot.name(), true, pot.tare(), Optional.empty(), 6, "dented"));
            Product product = ledger.products().product(1).orElseThrow();
            ledger.products().change(new Product(1, "renamed", product.brief(), product.note()));
        }
        assertThat(new String(export(other), StandardCharsets.UTF_8))
                .contains("\"shine\":[1,2.50]", "dented")
                .contains("\"mood\":{\"of\":\"day\"}", "renamed");
    }

    @Test
    void whatCannotBeReadLeavesNothingBehind() throws IOException {
        fill(10);
        byte[] file = export(home());
        String text = new String(file, StandardCharsets.UTF_8);
        List<String> wrong = List.of(
                text.substring(0, text.length() / 2),
                text.substring(0, text.length() - 3),
                "",
                "[]",
                "{\"stillroom\":\"workshop\",\"format\":1}",
                "{\"stillroom\":\"formula\",\"format\":1,\"tables\":{}}",
                text.replaceFirst("\"format\":1", "\"format\":2"),
                text.replaceFirst("\"product_id\":1", "\"product_id\":77"),
                text.replaceFirst("\"bodyBase64\":\"", "\"bodyBase64\":\"%%%"),
                text.replaceFirst("\"received_ug\":", "\"received_ug\":\"much\",\"was\":"));
        for (String one : wrong) {
            Path other = folder.resolve("other");
            assertThatThrownBy(() -> read(one, other))
                    .as(one.substring(0, Math.min(60, one.length())))
                    .isInstanceOf(LedgerException.class)
                    .message()
                    .endsWith(".")
                    .doesNotContain("Exception");
            assertThat(Ledger.existsIn(other)).isFalse();
        }
    }

    @Test
    void aWorkshopThatStandsThereIsNotOverwritten() throws IOException {
        fill(11);
        byte[] file = export(home());
        byte[] before = Files.readAllBytes(home().resolve("stillroom.db"));
        assertThatThrownBy(() -> read(file, home()))
                .isInstanceOf(LedgerException.class)
                .hasMessageContaining("holds a workshop already");
        assertThat(Files.readAllBytes(home().resolve("stillroom.db"))).isEqualTo(before);
    }
}
