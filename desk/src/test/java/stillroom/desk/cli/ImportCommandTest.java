package stillroom.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.ledger.Ledger;
import stillroom.ledger.export.WorkshopFile;

/** Import at the command line: what it answers, what it stores, its exit status. */
class ImportCommandTest {
    private static final String CLEAR = "INCI,%\nAqua,90\nPropanediol,5\nUrea,5\n";

    @TempDir
    private Path folder;

    private record Ran(int status, String out) {}

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private Ran run(Object... arguments) {
        return run(new ImportCommand(), arguments);
    }

    private Ran run(ImportCommand command, Object... arguments) {
        List<String> all =
                new ArrayList<>(List.of("--data", folder.resolve("shop").toString()));
        for (Object argument : arguments) {
            all.add(argument.toString());
        }
        StringWriter out = new StringWriter();
        int status = new CommandLine(command)
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(new StringWriter()))
                .execute(all.toArray(new String[0]));
        return new Ran(status, out.toString());
    }

    private int products() {
        try (Ledger ledger = Ledger.open(folder.resolve("shop"))) {
            return ledger.products().products().size();
        }
    }

    @Test
    void aDryRunStoresNothingAndMakesNoWorkshop() throws IOException {
        Ran ran = run("--dry-run", "--json", file("clear.csv", CLEAR));
        assertThat(ran.status()).as(ran.out()).isZero();
        JsonNode line = new ObjectMapper().readTree(ran.out()).at("/sheets/0/formulas/0/lines/1");
        assertThat(line.get("amount").asText()).isEqualTo("5");
        assertThat(line.get("nameCell").asText()).isEqualTo("A3");
        assertThat(line.get("card").asText()).isEqualTo("propanediol");
        assertThat(folder.resolve("shop")).doesNotExist();
    }

    @Test
    void eachLineThatWasUnderstoodIsSaid() throws IOException {
        Ran formula = run("--dry-run", file("a.csv", "Phase,INCI,%\nA,Aqua,90\nB,Propanediol,5\nB,Urea,5\n"));
        assertThat(formula.out()).containsPattern("A +90 % +Aqua").containsPattern("B +5 % +Propanediol");
        Ran list = run("--dry-run", file("b.csv", "Name,Paid,Bought (g),Left (g),Lot\nUrea,6.50,1000,880,U-1\n"));
        assertThat(list.out()).contains("Urea; 6.5 for 1000 g; 880 g on the shelf; lot U-1");
    }

    @Test
    void withoutYesNothingIsStored() throws IOException {
        run(file("clear.csv", CLEAR));
        assertThat(products()).isZero();
    }

    @Test
    void withYesWhatIsClearIsStoredAndTheRestIsNot() throws IOException {
        Path doubtful = file("doubtful.csv", "INCI,%\nAqua,90\nUrea,1-2 %\n");
        Ran ran = run("--yes", file("clear.csv", CLEAR), doubtful);
        assertThat(ran.status()).isEqualTo(3);
        assertThat(ran.out()).contains("clear: stored", "doubtful: not stored");
        assertThat(products()).isEqualTo(1);
        assertThat(run("--yes", "--doubtful", doubtful).status()).isZero();
        assertThat(products()).isEqualTo(2);
    }

    @Test
    void whatIsNoSheetIsAnsweredInASentence() throws IOException {
        Ran ran = run("--dry-run", file("a.pdf", "%PDF-1.7"), folder.resolve("missing.csv"));
        assertThat(ran.status()).isEqualTo(3);
        assertThat(ran.out()).contains("\"a.pdf\" is a PDF", "There is no file \"missing.csv\"");
    }

    @Test
    void atATerminalItAsksAndStoresOnlyAfterYes() throws IOException {
        Path clear = file("clear.csv", CLEAR);
        List<String> asked = new ArrayList<>();
        Ran no = run(terminal(asked, "no"), clear);
        assertThat(no.status()).isZero();
        assertThat(products()).isZero();
        assertThat(asked).singleElement().asString().startsWith("Store what has no open question into ");
        assertThat(run(terminal(asked, "Yes"), clear).out()).contains("clear: stored");
        assertThat(products()).isEqualTo(1);
        run(terminal(asked, "yes"), "--json", clear);
        run(terminal(asked, "yes"), "--dry-run", clear);
        assertThat(asked)
                .as("no question where a program reads, and none for a dry run")
                .hasSize(2);
        assertThat(products()).isEqualTo(1);
    }

    private static ImportCommand terminal(List<String> asked, String answer) {
        return new ImportCommand(question -> {
            asked.add(question);
            return Optional.of(answer);
        });
    }

    @Test
    void standardInputMayBeASheetAFormulaOrAWholeWorkshop() throws IOException {
        assertThat(fed(CLEAR, "--yes", "-").out()).contains("standard input: stored");
        String formula = Files.readString(Path.of("..", "docs", "examples", "hand-cream.json"));
        assertThat(fed(formula, "--yes", "-").out()).contains("Hand cream", "stored as product 2");
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        WorkshopFile.write(folder.resolve("shop"), whole);
        StringWriter out = new StringWriter();
        InputStream before = System.in;
        try {
            System.setIn(new ByteArrayInputStream(whole.toByteArray()));
            int status = new CommandLine(new ImportCommand())
                    .setOut(new PrintWriter(out))
                    .execute("--data", folder.resolve("other").toString(), "--yes", "--json", "-");
            assertThat(status).isZero();
        } finally {
            System.setIn(before);
        }
        assertThat(out.toString()).contains("\"stored\":true");
        try (Ledger other = Ledger.open(folder.resolve("other"))) {
            assertThat(other.products().products()).hasSize(2);
        }
    }

    private Ran fed(String text, Object... arguments) {
        InputStream before = System.in;
        try {
            System.setIn(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
            return run(arguments);
        } finally {
            System.setIn(before);
        }
    }

    /** The workshop has a card made of A; the file brings A made of the workshop's card. */
    @Test
    void aCardThatContainsItselfThroughTheWorkshopIsRefusedWhenItComesIn() throws IOException {
        try (Ledger ledger = Ledger.open(folder.resolve("shop"))) {
            ledger.materials()
                    .save(Material.named("half", "Half", Family.OTHER)
                            .withRevision(0)
                            .withComposition(Constituent.exactly("material:whole", 1)));
        }
        Path looped = file(
                "looped.json",
                "{\"name\":\"Round\",\"brief\":{\"type\":\"body-oil\"},\"lines\":[{\"material\":\"whole\",\"percent\":100}],"
                        + "\"materials\":[{\"key\":\"whole\",\"name\":\"Whole\",\"family\":\"other\","
                        + "\"composition\":[{\"material\":\"half\",\"percent\":100}]}]}");
        Ran ran = run("--yes", looped);
        assertThat(ran.status()).isEqualTo(3);
        assertThat(ran.out()).contains("a material contains itself").contains("whole → half → whole");
        assertThat(products()).isZero();
    }
}
