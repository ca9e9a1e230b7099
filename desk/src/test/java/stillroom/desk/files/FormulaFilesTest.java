package stillroom.desk.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;

/** Formula files out of one workshop and into another. */
class FormulaFilesTest {
    private static final Path EXAMPLES = Path.of("..", "docs", "examples");

    @TempDir
    Path folder;

    private static String example(String name) throws IOException {
        return Files.readString(EXAMPLES.resolve(name));
    }

    private static Answer looked(OpenDesk desk, String text) {
        return desk.postFile("/import/formula", Map.of(), "file", "f.json", text.getBytes(StandardCharsets.UTF_8));
    }

    private static void store(OpenDesk desk, String text) {
        Answer looked = looked(desk, text);
        assertThat(looked.status()).as(looked.body()).isEqualTo(200);
        assertThat(desk.ledger().products().products())
                .as("nothing before the yes")
                .isEmpty();
        Answer yes = desk.post("/import/formula", Map.of("text", text));
        assertThat(yes.status()).as(yes.body()).isEqualTo(303);
        assertThat(yes.location()).isEqualTo("/products/1/versions/1?did=added");
    }

    @Test
    void aFormulaGoesInAndComesOutTheSame() throws IOException {
        for (String name : new String[] {"hand-cream.json", "from-a-newer-version.json"}) {
            try (OpenDesk desk = OpenDesk.in(folder.resolve(name))) {
                String text = example(name);
                store(desk, text);
                assertThat(desk.get("/products/1/versions/1/formula.json").body())
                        .as(name)
                        .isEqualTo(text);
            }
        }
    }

    @Test
    void itsOwnMaterialsComeAlongAndTakeNoOtherCardsPlace() throws IOException {
        String text = example("own-materials.json");
        String key = Pattern.compile("\"materials\".*?\"key\": \"([^\"]+)\"", Pattern.DOTALL)
                .matcher(text)
                .results()
                .findFirst()
                .orElseThrow()
                .group(1);
        try (OpenDesk desk = OpenDesk.in(folder.resolve("first"))) {
            store(desk, text);
            assertThat(desk.ledger()
                            .materials()
                            .book()
                            .material(key)
                            .orElseThrow()
                            .composition())
                    .isNotEmpty();
        }
        try (OpenDesk desk = OpenDesk.in(folder.resolve("second"))) {
            desk.ledger().materials().save(Material.named(key, "Mine, with that key", Family.OIL));
            store(desk, text);
            assertThat(desk.ledger()
                            .materials()
                            .book()
                            .material(key)
                            .orElseThrow()
                            .name())
                    .isEqualTo("Mine, with that key");
            Formula formula =
                    desk.ledger().products().version(1, 1).orElseThrow().formula();
            assertThat(formula.lines())
                    .extracting(Line::materialKey)
                    .contains(key + "-2")
                    .doesNotContain(key);
        }
    }

    /** As the commands on formula files do. */
    @Test
    void aCommonNameLeadsToTheSubstanceThatItMeans() throws IOException {
        String text = example("hand-cream.json").replace("\"material\": \"glycerin-99\"", "\"inci\": \"Bronopol\"");
        try (OpenDesk desk = OpenDesk.in(folder)) {
            store(desk, text);
            String key = desk.ledger()
                    .products()
                    .version(1, 1)
                    .orElseThrow()
                    .formula()
                    .line("l2")
                    .orElseThrow()
                    .materialKey();
            assertThat(desk.ledger()
                            .materials()
                            .book()
                            .material(key)
                            .orElseThrow()
                            .composition())
                    .extracting(part -> part.substance())
                    .contains("2-bromo-2-nitropropane-1-3-diol");
        }
    }

    @Test
    void whatCannotBeReadIsSaidAndNothingStored() throws IOException {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            String text = example("hand-cream.json");
            assertThat(looked(desk, text.substring(0, 200)).status()).isEqualTo(422);
            Answer wrong =
                    desk.post("/import/formula", Map.of("text", text.replace("\"percent\": 5", "\"percent\": -5")));
            assertThat(wrong.status()).isEqualTo(422);
            assertThat(wrong.body()).contains("percent");
            assertThat(desk.postFile("/import/formula", Map.of(), "file", "", new byte[0])
                            .body())
                    .contains("Choose a file.");
            assertThat(looked(desk, text.replace("\"Hand cream\"", "\"<b>Cream</b>\""))
                            .body())
                    .contains("&lt;b&gt;Cream")
                    .doesNotContain("<b>Cream");
            assertThat(desk.ledger().products().products()).isEmpty();
        }
    }
}
