package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.ledger.backup.Backup;
import stillroom.ledger.backup.Backups;
import stillroom.ledger.backup.Keeping;

final class BackupsTest {
    private static final LocalDateTime MONDAY = LocalDateTime.of(2026, 11, 23, 9, 30);

    @TempDir
    Path home;

    private Backups backups;

    @BeforeEach
    void aWorkshop() {
        try (Ledger ledger = Workbench.open(home)) {
            Workbench.product(ledger);
        }
        backups = new Backups(home);
    }

    private void lastWritten(LocalDateTime time) throws IOException {
        Files.setLastModifiedTime(home.resolve("stillroom.db"), FileTime.from(time.toInstant(ZoneOffset.UTC)));
    }

    @Test
    void aCopyIsDueOnceADayAndOnlyAfterAChange() throws IOException {
        lastWritten(MONDAY);
        assertThat(backups.due(MONDAY, ZoneOffset.UTC)).as("none yet").isTrue();
        backups.writeDaily(MONDAY.plusMinutes(1), Keeping.USUAL);
        assertThat(backups.due(MONDAY.plusDays(1), ZoneOffset.UTC))
                .as("nothing new")
                .isFalse();
        lastWritten(MONDAY.plusHours(2));
        assertThat(backups.due(MONDAY.plusHours(3), ZoneOffset.UTC))
                .as("had one today")
                .isFalse();
        assertThat(backups.due(MONDAY.plusDays(1), ZoneOffset.UTC)).isTrue();
    }

    @Test
    void aDayOfWorkInTheWriteAheadLogCounts() {
        backups.writeDaily(LocalDateTime.now(ZoneOffset.UTC).minusDays(1), Keeping.USUAL);
        try (Ledger ledger = Workbench.open(home)) {
            Workbench.product(ledger);
            assertThat(backups.due(LocalDateTime.now(ZoneOffset.UTC).plusSeconds(1), ZoneOffset.UTC))
                    .isTrue();
        }
    }

    /** A year of daily work keeps the last seven days, five weeks and twelve months, and every copy by hand. */
    @Test
    void aYearOfCopiesIsPruned() {
        List<LocalDateTime> copies = new ArrayList<>();
        for (int day = 0; day < 400; day++) {
            copies.add(MONDAY.minusDays(day));
        }
        List<LocalDateTime> gone = Keeping.USUAL.superfluous(copies);
        List<LocalDateTime> kept = new ArrayList<>(copies);
        kept.removeAll(gone);
        assertThat(kept).startsWith(copies.subList(0, 7).toArray(LocalDateTime[]::new));
        // Monday itself, then the Sundays of the four weeks before; the last days of the eleven months before.
        assertThat(kept)
                .contains(MONDAY.minusDays(1), MONDAY.minusDays(8), MONDAY.minusDays(15), MONDAY.minusDays(22))
                .contains(LocalDateTime.of(2026, 10, 31, 9, 30), LocalDateTime.of(2025, 12, 31, 9, 30))
                .doesNotContain(LocalDateTime.of(2025, 11, 30, 9, 30))
                .hasSize(7 + 3 + 11);
    }

    @Test
    void aWorkshopThatRestedKeepsItsLastCopies() {
        List<LocalDateTime> longAgo =
                List.of(MONDAY.minusYears(3), MONDAY.minusYears(3).minusDays(1));
        assertThat(Keeping.USUAL.superfluous(longAgo)).isEmpty();
        assertThat(new Keeping(0, 0, 0).superfluous(longAgo)).containsExactly(longAgo.get(1));
    }

    @Test
    void copiesByHandAndForeignFilesAreNeverClearedAway() throws IOException {
        backups.write(MONDAY.minusYears(5));
        Files.writeString(backups.folder().resolve("daily-of-mine.db"), "mine");
        Files.writeString(backups.folder().resolve("daily-20269999-000000.db"), "mine");
        Keeping one = new Keeping(1, 0, 0);
        backups.writeDaily(MONDAY, one);
        backups.writeDaily(MONDAY.plusDays(1), one);
        assertThat(backups.all())
                .extracting(Backup::name)
                .containsExactly("daily-20261124-093000.db", "stillroom-20211123-093000.db");
        assertThat(backups.folder().resolve("daily-of-mine.db")).exists();
        assertThat(backups.folder().resolve("daily-20269999-000000.db")).exists();
        assertThat(backups.named("../stillroom.db")).isEmpty();
    }
}
