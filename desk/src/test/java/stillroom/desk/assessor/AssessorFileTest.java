package stillroom.desk.assessor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.formulary.batch.Batch;

class AssessorFileTest {
    @TempDir
    Path folder;

    private static byte[] bytes(OpenDesk desk, String path) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(desk.address() + path))
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray())
                .body();
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getDocumentCatalog().getStructureTreeRoot()).isNotNull();
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void whatIsMissingStandsAtTheFrontAndGoesWhenItIsThere() throws Exception {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            desk.post("/demonstration", Map.of());
            String version = "/products/1/versions/1";
            byte[] pdf = bytes(desk, version + "/assessor.pdf");
            Files.createDirectories(Path.of("target"));
            Files.write(Path.of("target", "assessor-test.pdf"), pdf);
            String before = text(pdf);
            assertThat(before.indexOf("What is missing")).isLessThan(before.indexOf("Quantitative composition"));
            assertThat(before)
                    .contains(
                            "No challenge test is on file",
                            "No stability study is on file",
                            "No safety data sheet is on file for",
                            "Sodium Benzoate",
                            "532-32-1",
                            "Exposure and margins",
                            "as recorded on",
                            "Invented data")
                    .contains("Aqua");
            desk.postFile(
                    "/papers/products/1",
                    Map.of("kind", "CHALLENGE_TEST", "title", "Report 7", "note", "criteria A met"),
                    "file",
                    "../../report.pdf",
                    "the report".getBytes(StandardCharsets.UTF_8));
            String after = text(bytes(desk, version + "/assessor.pdf"));
            assertThat(after).doesNotContain("No challenge test is on file").contains("Report 7", "criteria A met");
        }
    }

    @Test
    void theFolderHoldsTheRecordsAndTheDocuments() throws Exception {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            desk.post("/demonstration", Map.of());
            desk.postFile(
                    "/papers/products/"
                            + desk.ledger().batches().batch(1).orElseThrow().productId(),
                    Map.of("kind", "STABILITY_STUDY", "title", "Study"),
                    "file",
                    "../../report.pdf",
                    "the report".getBytes(StandardCharsets.UTF_8));
            List<String> names = new ArrayList<>();
            Batch batch = desk.ledger().batches().batch(1).orElseThrow();
            String version = "/products/" + batch.productId() + "/versions/"
                    + batch.version().orElseThrow();
            byte[] zip = bytes(desk, version + "/assessor.zip");
            try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
                for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                    names.add(entry.getName());
                }
            }
            assertThat(names)
                    .contains("documents/1--..-report.pdf", "label.pdf")
                    .anyMatch(name -> name.endsWith("-for-the-assessor.pdf"))
                    .anyMatch(name -> name.startsWith("batch-records/") && name.endsWith(".pdf"))
                    .noneMatch(name -> name.contains("../"));
        }
    }
}
