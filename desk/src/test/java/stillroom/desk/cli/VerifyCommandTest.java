package stillroom.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import stillroom.desk.trace.SoldBench;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;

final class VerifyCommandTest {
    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();

    private int verify(String... arguments) {
        CommandLine line = new CommandLine(new VerifyCommand()).setOut(new PrintWriter(out));
        return line.execute(arguments);
    }

    @Test
    void theHashOnTheRecordIsFoundAndAnotherIsNot() {
        String head;
        try (SoldBench bench = SoldBench.in(folder)) {
            Batch batch = bench.made("V-1");
            bench.append(
                    batch,
                    new BatchEvent.Filled(
                            "Kettle",
                            "bottle",
                            2,
                            stillroom.formulary.quantity.Grams.of("99"),
                            java.util.Optional.empty(),
                            ""));
            assertThat(bench.act(
                                    batch,
                                    "fill",
                                    "release",
                                    "overrule-label",
                                    "test",
                                    "overrule-deviations",
                                    "test",
                                    "overrule-record",
                                    "test",
                                    "overrule-steps",
                                    "test",
                                    "overrule-yield",
                                    "test",
                                    "overrule-ph",
                                    "test")
                            .status())
                    .isEqualTo(303);
            head = bench.desk().ledger().batches().headHash(batch.id()).orElseThrow();
            bench.append(batch, new BatchEvent.Noted("later"));
            // While the workshop is open.
            assertThat(verify("V-1", "--head", head, "--data", folder.toString()))
                    .isZero();
        }
        assertThat(out.toString()).contains("nothing is altered").contains("later entries were added since");
        assertThat(verify("V-1", "--head", "0".repeat(64), "--json", "--data", folder.toString()))
                .isEqualTo(4);
        assertThat(out.toString()).contains("\"sound\":false").contains("No entry of batch V-1");
        assertThat(verify("--data", folder.toString())).isZero();
        assertThat(out.toString()).contains("things outside the log were compared");
    }
}
