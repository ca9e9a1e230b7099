package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.LogEntry;

/** A write that was torn by a power cut: a copy of the file opens, and holds the entries up to some moment, in order. */
final class TornWriteTest {
    private static final int CUTS = 60;

    @TempDir
    Path folder;

    @Test
    void aTornFileOpensWithAPrefixOfTheLog() throws IOException {
        Path home = folder.resolve("home");
        try (Ledger ledger = Workbench.open(home)) {
            Batch batch = Workbench.batch(ledger);
            for (int i = 0; i < 60; i++) {
                ledger.batches().append(batch.id(), "r" + i, Workbench.MORNING, "Ana", Workbench.poured("G1", "1"));
            }
            List<LogEntry> all = ledger.batches().log(batch.id());
            long whole = Files.size(home.resolve("stillroom.db-wal"));
            Random random = new Random(4711);
            int shorter = 0;
            for (int cut = 0; cut < CUTS; cut++) {
                int kept = tornAt(home, random, random.nextLong(whole + 1), batch, all);
                shorter += kept < all.size() ? 1 : 0;
            }
            assertThat(shorter).as("cuts that really lost something").isGreaterThan(CUTS / 2);
            assertThat(tornAt(home, random, whole, batch, all)).as("uncut").isEqualTo(all.size());
        }
    }

    private int tornAt(Path home, Random random, long length, Batch batch, List<LogEntry> all) throws IOException {
        Path torn = Files.createTempDirectory(folder, "torn");
        Files.copy(home.resolve("stillroom.db"), torn.resolve("stillroom.db"));
        Files.copy(home.resolve("stillroom.db-wal"), torn.resolve("stillroom.db-wal"));
        try (FileChannel wal = FileChannel.open(torn.resolve("stillroom.db-wal"), StandardOpenOption.WRITE)) {
            wal.truncate(length);
            if (random.nextBoolean() && length < Files.size(home.resolve("stillroom.db-wal"))) {
                byte[] rubbish = new byte[random.nextInt(9000)];
                random.nextBytes(rubbish);
                wal.write(ByteBuffer.wrap(rubbish), length);
            }
        }
        try (Ledger ledger = Workbench.open(torn)) {
            List<LogEntry> log = ledger.batches().log(batch.id());
            assertThat(log).as("cut at %d", length).isEqualTo(all.subList(0, log.size()));
            if (ledger.batches().batch(batch.id()).isPresent()) {
                assertThat(ledger.batches().firstAltered(batch.id())).isEmpty();
            }
            return log.size();
        }
    }
}
