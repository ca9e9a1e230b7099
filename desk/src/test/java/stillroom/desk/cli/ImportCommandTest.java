package stillroom.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import stillroom.ledger.Ledger;

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
        List<String> all =
                new ArrayList<>(List.of("--data", folder.resolve("shop").toString()));
        for (Object argument : arguments) {
            all.add(argument.toString());
        }
        StringWriter out = new StringWriter();
        int status = new CommandLine(new ImportCommand())
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
}
