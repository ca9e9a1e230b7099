package stillroom.desk.batches;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The batch record as a file: what was weighed, as the balance showed it, and room to sign. */
class RecordSheetTest {
    private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;

    @TempDir
    Path folder = Path.of("");

    @SuppressWarnings("NullAway.Init")
    private LotionBench bench;

    private long batch;

    @BeforeEach
    void releaseWithReasons() {
        bench = LotionBench.in(folder);
        batch = bench.begin("B-1");
        bench.readyBoth(batch);
        bench.weigh(batch, "Kettle", "l1", "391", "W-1");
        bench.weigh(batch, "Kettle", "l2", "25", "G-soon");
        bench.act(
                batch,
                Map.of(
                        "act",
                        "weigh",
                        "vessel",
                        "Kettle",
                        "line",
                        "l6",
                        "purpose",
                        "CORRECTION_ACID",
                        "mass",
                        "1.2",
                        "lot",
                        "A-1",
                        "balance",
                        "Fine scale"));
        Map<String, String> release = new HashMap<>(Map.of("act", "release", "by", "Ben"));
        release.put("requestId", UUID.randomUUID().toString());
        for (String gate : List.of("ph", "deviations", "steps", "label", "yield", "clean", "record")) {
            release.put("overrule-" + gate, "looked at " + gate);
        }
        assertThat(bench.post("/batches/" + batch + "/fill", release).status()).isEqualTo(303);
    }

    @AfterEach
    void close() {
        bench.close();
    }

    private PDDocument record() throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(
                        URI.create(bench.desk().address() + "/batches/" + batch + "/record.pdf"))
                .build();
        byte[] file = HttpClient.newHttpClient()
                .send(request, HttpResponse.BodyHandlers.ofByteArray())
                .body();
        Files.createDirectories(Path.of("target"));
        Files.write(Path.of("target", "record-test.pdf"), file);
        return Loader.loadPDF(file);
    }

    @Test
    void weighedMassesHaveTheDecimalsOfTheirBalance() throws Exception {
        try (PDDocument document = record()) {
            String text = new PDFTextStripper().getText(document);
            assertThat(text).contains("391.0", "25.0", "1.20").contains("1.50");
            assertThat(text).contains("Poured into Kettle: 1.20 g", "Poured into Kettle: 391.0 g");
            assertThat(text).contains("to reading");
        }
    }

    @Test
    void whatWasOverruledStandsThereOnce() throws Exception {
        try (PDDocument document = record()) {
            String text = new PDFTextStripper().getText(document);
            assertThat(text).containsOnlyOnce("Overruled").containsOnlyOnce("ph: looked at ph");
            assertThat(text).contains("Released by Ben.");
        }
    }

    /** A hand needs about 10 mm to sign. */
    @Test
    void thereIsRoomToSignAboveTheLine() throws Exception {
        AtomicReference<Double> words = new AtomicReference<>(0.0);
        AtomicReference<Double> above = new AtomicReference<>(0.0);
        try (PDDocument document = record()) {
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> positions) throws IOException {
                    double y = positions.get(0).getYDirAdj();
                    if (text.startsWith("Made by")) {
                        words.set(y);
                    } else if (words.get() == 0) {
                        above.set(y);
                    }
                    super.writeString(text, positions);
                }
            };
            stripper.setSortByPosition(true);
            assertThat(stripper.getText(document)).contains("Made by");
        }
        assertThat((words.get() - above.get()) / POINTS_PER_MILLIMETRE).isGreaterThan(16);
    }
}
