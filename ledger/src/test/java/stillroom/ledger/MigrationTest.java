package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;

final class MigrationTest {
    private static final Path FILE_FORMAT = Path.of("..", "docs", "file-format.md");

    @TempDir
    Path folder;

    private Batch batch;

    @BeforeEach
    void aWorkshop() {
        try (Ledger ledger = Workbench.open(folder)) {
            batch = Workbench.batch(ledger);
            ledger.batches().append(batch.id(), "1", Workbench.MORNING, "Ana", new BatchEvent.Begun(""));
        }
    }

    private Path beforeUpdate() {
        return folder.resolve("before-update.db");
    }

    @Test
    void aCurrentFileIsOpenedWithoutMigration() {
        try (Ledger ledger = Workbench.open(folder)) {
            assertThat(ledger.batches().log(batch.id())).hasSize(1);
        }
        assertThat(beforeUpdate()).doesNotExist();
    }

    @Test
    void anOlderFileIsCopiedAsideAndBroughtUpToDate() throws SQLException {
        backToVersionOne(folder);
        try (Ledger ledger = Workbench.open(folder)) {
            assertThat(ledger.batches().log(batch.id())).hasSize(1);
            assertThat(ledger.batches().firstAltered(batch.id())).isEmpty();
        }
        assertThat(beforeUpdate()).exists();
        assertThatThrownBy(() -> Workbench.behindItsBack(folder, "delete from log_entry"))
                .isInstanceOf(SQLException.class)
                .hasMessageContaining("never");
    }

    @Test
    void aBackupOfAnOlderVersionComesBack() throws SQLException {
        backToVersionOne(folder);
        Path elsewhere = folder.resolve("elsewhere");
        Ledger.restore(folder.resolve("stillroom.db"), elsewhere);
        try (Ledger ledger = Workbench.open(elsewhere)) {
            assertThat(ledger.batches().byCode(batch.code())).contains(batch);
        }
    }

    /** Version 1 is the same without the triggers and without the tables that came later. */
    private static void backToVersionOne(Path folder) throws SQLException {
        List<String> triggers = names(folder, "trigger");
        assertThat(triggers).isNotEmpty();
        for (String trigger : triggers) {
            Workbench.behindItsBack(folder, "drop trigger " + trigger);
        }
        for (String table : List.of(
                "label_sheet",
                "ph_meter",
                "calibration",
                "document",
                "batch_source",
                "lot_origin",
                "batch_touch",
                "happening",
                "attachment")) {
            Workbench.behindItsBack(folder, "drop table " + table);
        }
        Workbench.behindItsBack(folder, "drop index log_entry_at");
        Workbench.behindItsBack(folder, "delete from flyway_schema_history where version <> '1'");
    }

    @Test
    void everyTableIsDocumented() throws SQLException, IOException {
        String document = Files.readString(FILE_FORMAT);
        List<String> tables = names(folder, "table");
        assertThat(tables).contains("log_entry");
        for (String table : tables) {
            if (!table.startsWith("flyway")) {
                assertThat(document).contains("`" + table + "`");
            }
        }
    }

    private static List<String> names(Path folder, String type) throws SQLException {
        List<String> names = new ArrayList<>();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("stillroom.db"));
                Statement statement = connection.createStatement();
                ResultSet result =
                        statement.executeQuery("select name from sqlite_master where type = '" + type + "'")) {
            while (result.next()) {
                names.add(result.getString(1));
            }
        }
        return names;
    }
}
