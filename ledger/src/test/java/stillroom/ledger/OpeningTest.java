package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.ledger.store.LedgerException;
import stillroom.ledger.workshop.Workshop;

/** What stands in the way is said in one sentence, and the data stays as it was. */
final class OpeningTest {
    @TempDir
    Path folder;

    private static void refused(Path folder, String because) {
        assertThatThrownBy(() -> Workbench.open(folder).close())
                .isInstanceOf(LedgerException.class)
                .hasMessageContaining(because)
                .message()
                .doesNotContain("\n")
                .endsWith(".");
    }

    @Test
    void aNewFolderHoldsAnUnnamedWorkshop() {
        Path deep = folder.resolve("a/b");
        assertThat(Ledger.existsIn(deep)).isFalse();
        try (Ledger ledger = Workbench.open(deep)) {
            assertThat(ledger.settings().read()).isEqualTo(Workshop.UNNAMED);
        }
        assertThat(Ledger.existsIn(deep)).isTrue();
    }

    @Test
    void aSecondCopyIsRefusedAndTheFirstGoesOn() {
        try (Ledger first = Workbench.open(folder)) {
            refused(folder, "Another running copy");
            Workbench.product(first);
            assertThat(first.products().products()).hasSize(1);
        }
        try (Ledger again = Workbench.open(folder)) {
            assertThat(again.products().products()).hasSize(1);
        }
    }

    @Test
    void aNewerFileIsRefusedUntouched() throws Exception {
        Workbench.open(folder).close();
        Workbench.behindItsBack(
                folder,
                "insert into flyway_schema_history values (99, '900', 'later', 'SQL', 'V900', 1, 'x', '2030', 1, 1)");
        byte[] before = Files.readAllBytes(folder.resolve("stillroom.db"));
        refused(folder, "newer version");
        assertThat(Files.readAllBytes(folder.resolve("stillroom.db"))).isEqualTo(before);
    }

    @Test
    void aFileThatIsNoDatabaseIsRefusedUntouched() throws IOException {
        byte[] letter = "Dear diary, ".repeat(1000).getBytes(StandardCharsets.UTF_8);
        Files.write(folder.resolve("stillroom.db"), letter);
        refused(folder, "not a Stillroom file");
        assertThat(Files.readAllBytes(folder.resolve("stillroom.db"))).isEqualTo(letter);
    }

    @Test
    void someoneElsesDatabaseIsRefusedUntouched() throws Exception {
        Workbench.behindItsBack(folder, "create table recipe (id integer)");
        byte[] before = Files.readAllBytes(folder.resolve("stillroom.db"));
        refused(folder, "not of Stillroom");
        assertThat(Files.readAllBytes(folder.resolve("stillroom.db"))).isEqualTo(before);
    }

    @Test
    void aDamagedFileIsRefused() throws IOException {
        try (Ledger ledger = Workbench.open(folder)) {
            Workbench.product(ledger);
        }
        Path file = folder.resolve("stillroom.db");
        byte[] bytes = Files.readAllBytes(file);
        Arrays.fill(bytes, 100, 4096, (byte) 0x5a);
        Files.write(file, bytes);
        refused(folder, "damaged");
    }

    @Test
    void aFolderThatCannotBeMadeIsRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "in the way");
        refused(file.resolve("data"), "cannot be written");
        assertThat(Files.readString(file)).isEqualTo("in the way");
    }

    @Test
    void aFolderInTheFilesPlaceIsRefused() throws IOException {
        Files.createDirectories(folder.resolve("stillroom.db"));
        refused(folder, "cannot be opened");
    }

    @Test
    void workAfterClosingIsRefused() {
        Ledger ledger = Workbench.open(folder);
        ledger.close();
        assertThatThrownBy(() -> ledger.settings().read()).isInstanceOf(LedgerException.class);
        assertThatThrownBy(() -> Workbench.product(ledger)).isInstanceOf(LedgerException.class);
    }
}
