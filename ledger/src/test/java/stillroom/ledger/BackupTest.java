package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.formula.Product;
import stillroom.ledger.store.LedgerException;

final class BackupTest {
    @TempDir
    Path folder;

    private Path home() {
        return folder.resolve("home");
    }

    private Path copy() {
        return folder.resolve("backups/copy.db");
    }

    @Test
    void aBackupHoldsWhatStoodAtThatMomentAndComesBack() throws IOException {
        Product kept;
        try (Ledger ledger = Workbench.open(home())) {
            kept = Workbench.product(ledger);
            ledger.backupTo(copy());
            Workbench.product(ledger);
        }
        Path aside = Ledger.restore(copy(), home());
        try (Ledger ledger = Workbench.open(home())) {
            assertThat(ledger.products().products()).containsExactly(kept);
        }
        Path second = folder.resolve("second");
        Files.createDirectories(second);
        Files.copy(aside, second.resolve("stillroom.db"));
        try (Ledger ledger = Workbench.open(second)) {
            assertThat(ledger.products().products())
                    .as("what stood there is kept")
                    .hasSize(2);
        }
    }

    @Test
    void aBackupDuringWorkIsAConsistentPrefix() throws Exception {
        try (Ledger ledger = Workbench.open(home())) {
            Batch batch = Workbench.batch(ledger);
            AtomicBoolean enough = new AtomicBoolean();
            CountDownLatch begun = new CountDownLatch(1);
            Thread work = new Thread(() -> {
                for (int i = 0; !enough.get(); i++) {
                    ledger.batches()
                            .append(batch.id(), "r" + i, Workbench.MORNING, "Ana", new BatchEvent.Noted("n" + i));
                    begun.countDown();
                }
            });
            work.start();
            begun.await();
            ledger.backupTo(copy());
            Ledger.backup(home(), folder.resolve("from-outside.db"));
            enough.set(true);
            work.join();
            List<LogEntry> all = ledger.batches().log(batch.id());
            assertPrefix(copy(), batch, all);
            assertPrefix(folder.resolve("from-outside.db"), batch, all);
        }
    }

    private void assertPrefix(Path backup, Batch batch, List<LogEntry> all) {
        Path elsewhere = folder.resolve("restored-" + backup.getFileName());
        Ledger.restore(backup, elsewhere);
        try (Ledger restored = Workbench.open(elsewhere)) {
            List<LogEntry> log = restored.batches().log(batch.id());
            assertThat(log).isNotEmpty().isEqualTo(all.subList(0, log.size()));
            assertThat(restored.batches().firstAltered(batch.id())).isEmpty();
        }
    }

    @Test
    void aBackupOverwritesNothing() throws IOException {
        Files.createDirectories(copy().getParent());
        Files.writeString(copy(), "precious");
        try (Ledger ledger = Workbench.open(home())) {
            assertThatThrownBy(() -> ledger.backupTo(copy())).isInstanceOf(LedgerException.class);
        }
        assertThat(Files.readString(copy())).isEqualTo("precious");
    }

    @Test
    void whatIsNoBackupIsNotRestored() throws IOException {
        Product kept;
        try (Ledger ledger = Workbench.open(home())) {
            kept = Workbench.product(ledger);
            ledger.backupTo(copy());
        }
        byte[] bytes = Files.readAllBytes(copy());
        Path cut = Files.write(folder.resolve("cut.db"), Arrays.copyOf(bytes, bytes.length / 2));
        Path letter = Files.writeString(folder.resolve("letter.db"), "Dear diary, ".repeat(1000));
        Path empty = Files.createFile(folder.resolve("empty.db"));
        for (Path wrong : List.of(cut, letter, empty, folder.resolve("none.db"), folder)) {
            assertThatThrownBy(() -> Ledger.restore(wrong, home()))
                    .as(wrong.toString())
                    .isInstanceOf(LedgerException.class);
        }
        try (Ledger ledger = Workbench.open(home())) {
            assertThat(ledger.products().products()).containsExactly(kept);
        }
    }

    @Test
    void aFolderInUseIsNotRestoredInto() {
        try (Ledger ledger = Workbench.open(home())) {
            ledger.backupTo(copy());
            assertThatThrownBy(() -> Ledger.restore(copy(), home()))
                    .isInstanceOf(LedgerException.class)
                    .hasMessageContaining("Another running copy");
        }
    }
}
