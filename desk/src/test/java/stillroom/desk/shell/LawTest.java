package stillroom.desk.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.rule.RuleBook;
import stillroom.ledger.store.LedgerException;

/** A maker's own country as a folder in the data folder, as the README of the rule tables describes it. */
class LawTest {
    private static final String HEAD =
            "entry,row,kind,name,substances,products,only_for,not_for,purpose,limit_percent,counting,expressed_as,"
                    + "expressed_molar_mass,ph_min,ph_max,not_with,warning,warning_above_percent,valid_from,"
                    + "valid_until,stock_until,amended_by,source_key,paragraph,read_on,note\n";

    private static void table(Path data, String rows) throws IOException {
        Path folder = Files.createDirectories(data.resolve("rules").resolve("nz"));
        Files.writeString(folder.resolve("schedule-4.csv"), "# made up\n" + HEAD + rows);
    }

    @Test
    void aFolderIsReadUnderItsNameInCapitals(@TempDir Path data) throws IOException {
        table(data, "12,,limit,phenoxyethanol,phenoxyethanol,,,,,1,,,,,,,,,,,,,own-copy,item 12,,\n");
        RuleBook book = Law.bookWith(data);
        assertThat(book.law("NZ").orElseThrow().rules().get(0).id()).isEqualTo("nz-schedule-4-12");
        assertThat(book.law("EU")).isPresent();
        assertThat(Law.bookWith(data.resolve("elsewhere")).law("NZ")).isEmpty();
    }

    @Test
    void aFaultStopsWithFileAndLine(@TempDir Path data) throws IOException {
        table(data, "12,,limit,phenoxyethanol,phenoxyethanol,,,,,much,,,,,,,,,,,,,own-copy,item 12,,\n");
        assertThatThrownBy(() -> Law.bookWith(data))
                .isInstanceOf(LedgerException.class)
                .hasMessageContaining("NZ")
                .hasMessageContaining("schedule-4, line 3")
                .hasMessageContaining("much");
    }
}
