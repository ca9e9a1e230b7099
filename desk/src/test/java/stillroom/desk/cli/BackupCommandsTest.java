package stillroom.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import stillroom.ledger.Ledger;
import stillroom.ledger.workshop.Workshop;

class BackupCommandsTest {
    private static final Workshop OURS = new Workshop("Ours", "", List.of(), "EU", "EUR", 2, false);
    private static final Workshop LATER = new Workshop("Later", "", List.of(), "EU", "EUR", 2, false);

    @TempDir
    Path folder;

    /** As the program's first command, which has the option too. */
    @Command(subcommands = {BackupCommand.class, RestoreCommand.class, ExportCommand.class, ImportCommand.class})
    private static final class Program {
        @Option(names = "--data")
        private Path data = Path.of("nowhere");
    }

    private record Ran(int status, String said) {}

    private static Ran run(String... arguments) {
        StringWriter out = new StringWriter();
        int status = new CommandLine(new Program())
                .setOut(new PrintWriter(out))
                .setExecutionExceptionHandler((fault, command, parsed) -> 1)
                .execute(arguments);
        return new Ran(status, out.toString());
    }

    private String home() {
        return folder.resolve("home").toString();
    }

    private static void write(String home, Workshop workshop) {
        try (Ledger ledger = Ledger.open(Path.of(home))) {
            ledger.settings().write(workshop);
        }
    }

    private static String name(String home) {
        try (Ledger ledger = Ledger.open(Path.of(home))) {
            return ledger.settings().read().name();
        }
    }

    @Test
    void aCopyGoesOutAndComesBackWhereverTheFolderIsNamed() throws IOException {
        write(home(), OURS);
        String copy = folder.resolve("copy.db").toString();
        Ran out = run("backup", copy, "--data", home(), "--json");
        assertThat(out.status()).isZero();
        JsonNode said = new ObjectMapper().readTree(out.said());
        assertThat(said.get("bytes").asLong()).isEqualTo(Files.size(Path.of(copy)));
        write(home(), LATER);
        Ran back = run("--data", home(), "restore", copy);
        assertThat(back.status()).isZero();
        assertThat(back.said()).contains("before-restore.db");
        assertThat(name(home())).isEqualTo("Ours");
    }

    @Test
    void everythingIsExportedAsOneFileOrAsTables() throws IOException {
        write(home(), OURS);
        Path file = folder.resolve("workshop.json");
        assertThat(run("export", file.toString(), "--data", home(), "--json").status())
                .isZero();
        assertThat(new ObjectMapper()
                        .readTree(file.toFile())
                        .at("/tables/workshop/0/body/name")
                        .asText())
                .isEqualTo("Ours");
        String other = folder.resolve("other").toString();
        assertThat(run("import", file.toString(), "--data", other).status()).isZero();
        assertThat(folder.resolve("other")).as("not without yes").doesNotExist();
        assertThat(run("import", file.toString(), "--yes", "--data", other).status())
                .isZero();
        assertThat(name(other)).isEqualTo("Ours");
        assertThat(run("import", file.toString(), "--yes", "--data", other).status())
                .as("only into an empty folder")
                .isEqualTo(1);
        String cream = Path.of("..", "docs", "examples", "hand-cream.json").toString();
        Ran formula = run("import", cream, "--yes", "--json", "--data", other);
        assertThat(formula.status()).as(formula.said()).isZero();
        assertThat(formula.said()).contains("/products/1/versions/1");
        assertThat(run("export", file.toString(), "--data", home()).status())
                .as("overwrites nothing")
                .isEqualTo(1);
        Ran tables = run("export", "--csv", folder.resolve("tables").toString(), "--data", home(), "--json");
        assertThat(tables.said()).contains("formulas.csv");
        assertThat(folder.resolve("tables/weighings.csv")).exists();
        assertThat(run("export", folder.resolve("x.json").toString(), "--data", "nowhere")
                        .status())
                .isEqualTo(1);
        assertThat(folder.resolve("x.json")).doesNotExist();
        assertThat(folder.resolve("x.json.part")).doesNotExist();
    }

    @Test
    void withoutAFileTheCopyIsDatedAndBesideTheWorkshop() throws IOException {
        write(home(), OURS);
        Ran ran = run("backup", "--data", home(), "--json");
        Path written =
                Path.of(new ObjectMapper().readTree(ran.said()).get("written").asText());
        assertThat(written).exists().hasParent(folder.resolve("home/backups"));
    }

    @Test
    void nothingIsOverwrittenAndNoCopyMadeOfNothing() throws IOException {
        write(home(), OURS);
        Path precious = Files.writeString(folder.resolve("precious"), "mine");
        assertThat(run("backup", precious.toString(), "--data", home()).status())
                .isEqualTo(1);
        assertThat(precious).hasContent("mine");
        assertThat(run("restore", precious.toString(), "--data", home()).status())
                .isEqualTo(1);
        assertThat(name(home())).isEqualTo("Ours");
        assertThat(run("backup", "--data", folder.resolve("none").toString()).status())
                .isEqualTo(1);
    }
}
