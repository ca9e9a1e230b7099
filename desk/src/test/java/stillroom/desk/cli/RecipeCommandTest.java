package stillroom.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import stillroom.desk.cli.formula.RecipeCommand;

class RecipeCommandTest {
    private static final String CREAM =
            Path.of("..", "docs", "examples", "hand-cream.json").toString();

    @TempDir
    Path folder;

    private record Ran(int status, String said) {}

    private static Ran run(String... arguments) {
        StringWriter out = new StringWriter();
        int status = new CommandLine(new RecipeCommand())
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(out))
                .setExecutionExceptionHandler((fault, command, parsed) -> 1)
                .execute(arguments);
        return new Ran(status, out.toString());
    }

    @Test
    void aFormulaFileBecomesARecipeFileOrAPage() throws IOException {
        Path page = folder.resolve("recipe.html");
        assertThat(run(CREAM, "--batch", "1000", "--out", page.toString()).status())
                .isZero();
        assertThat(Files.readString(page)).contains("Hand cream", "id=\"recipe-data\"", "\"size\":\"1000\"");
        assertThat(run(CREAM, "--batch", "1000", "--out", page.toString()).status())
                .as("overwrites nothing")
                .isEqualTo(1);
        Path sheet = folder.resolve("recipe.pdf");
        assertThat(run(CREAM, "--batch", "1000", "--out", sheet.toString(), "--json")
                        .said())
                .contains("\"written\"");
        try (PDDocument document = Loader.loadPDF(sheet.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
        }
    }

    @Test
    void aBatchTooSmallForTheBalanceAndAnotherKindOfFileAreRefused() {
        Path page = folder.resolve("small.html");
        Ran small = run(CREAM, "--batch", "2", "--step", "1", "--out", page.toString());
        assertThat(small.status()).isEqualTo(3);
        assertThat(page).doesNotExist();
        assertThat(run(CREAM, "--out", folder.resolve("recipe.txt").toString()).status())
                .isEqualTo(2);
        assertThat(run(CREAM, "--batch", "-5", "--out", page.toString()).status())
                .isEqualTo(2);
    }

    @Test
    void noneIsHandedOutForWhatAnotherLawGoverns() throws IOException {
        Path claims = Files.writeString(
                folder.resolve("sun.json"),
                Files.readString(Path.of(CREAM))
                        .replace("\"pack\":", "\"claims\": [\"sun protection factor 30\"],\n    \"pack\":"));
        Path page = folder.resolve("sun.html");
        Ran refused = run(claims.toString(), "--batch", "1000", "--out", page.toString());
        assertThat(refused.status()).isEqualTo(3);
        assertThat(refused.said()).contains("another law");
        assertThat(page).doesNotExist();
    }
}
