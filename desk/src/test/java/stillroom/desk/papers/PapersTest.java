package stillroom.desk.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.desk.OpenDesk.Answer;

class PapersTest {
    @TempDir
    Path folder;

    private static final Map<String, String> SHEET = Map.of(
            "kind",
            "SAFETY_SHEET",
            "title",
            "Sheet <1>",
            "dated",
            "2024-02-01",
            "reviewBy",
            "2026-12-01",
            "note",
            "revision 3");

    @Test
    void aDocumentIsFiledFoundWhenDueAndTakenOut() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            String page = "/papers/materials/glycerin-99";
            byte[] file = "<script>alert(1)</script>".getBytes(StandardCharsets.UTF_8);
            Answer filed = desk.postFile(page, SHEET, "file", "..\\sheet.html", file);
            assertThat(filed.status()).as(filed.body()).isEqualTo(303);
            assertThat(desk.get(page).body()).contains("Sheet &lt;1&gt;", "safety data sheet", "1 Dec 2026");
            assertThat(desk.get(page + "/1/file").body()).isEqualTo(new String(file, StandardCharsets.UTF_8));
            desk.post("/", Map.of("name", "Ours"));
            assertThat(desk.get("/").body()).contains("Sheet &lt;1&gt;");
            assertThat(desk.post(page + "/1/remove", Map.of()).status()).isEqualTo(303);
            assertThat(desk.get(page).body()).doesNotContain("Sheet &lt;1&gt;");
            assertThat(desk.get("/").body()).doesNotContain("Sheet &lt;1&gt;");
        }
    }

    @Test
    void eachThingHasItsOwnAndWhatIsNotThereHasNone() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            desk.post("/demonstration", Map.of());
            desk.postFile("/papers/products/1", SHEET, "file", "", new byte[0]);
            assertThat(desk.get("/papers/products/1").body()).contains("Sheet &lt;1&gt;");
            assertThat(desk.get("/papers/products/2").body()).doesNotContain("Sheet &lt;1&gt;");
            assertThat(desk.get("/papers/products/1/1/file").status()).isEqualTo(404);
            assertThat(desk.get("/papers/products/99").status()).isEqualTo(404);
            assertThat(desk.get("/papers/products/x").status()).isEqualTo(404);
            assertThat(desk.get("/papers/batches/1").status()).isEqualTo(404);
            assertThat(desk.get("/papers/materials/no-such").status()).isEqualTo(404);
            Answer wrong = desk.postFile(
                    "/papers/products/1",
                    Map.of("kind", "PAPER", "title", "", "dated", "soon"),
                    "file",
                    "",
                    new byte[0]);
            assertThat(wrong.status()).isEqualTo(422);
            assertThat(wrong.body()).contains("The title is missing.", "is not a date", "is not one of the choices");
        }
    }
}
