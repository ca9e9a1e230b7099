package stillroom.ledger;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.LogEntry;

/** A process that weighs into one batch until it is killed, and says the number of each entry once it is confirmed. */
final class WeighingUntilKilled {
    private WeighingUntilKilled() {}

    /** Arguments: folder, product, batch code. */
    public static void main(String[] arguments) {
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
        try (Ledger ledger = Ledger.open(Path.of(arguments[0]), Workbench::starter)) {
            Batch batch = ledger.batches()
                    .open(Long.parseLong(arguments[1]), Optional.empty(), arguments[2], LocalDate.EPOCH)
                    .orElseThrow();
            for (int i = 1; i < 100_000; i++) {
                LogEntry entry = ledger.batches()
                        .append(batch.id(), "r" + i, Workbench.MORNING, "Ana", Workbench.poured("G1", i + ".25"));
                out.println(entry.number());
            }
        }
    }
}
