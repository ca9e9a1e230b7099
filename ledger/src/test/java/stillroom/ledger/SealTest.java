package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.concern.Concern;
import stillroom.formulary.label.LabelSheet;
import stillroom.formulary.material.Lot;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.seal.Verdict;

/** One byte is altered in each thing that a record rests on, and is found. */
final class SealTest {
    @TempDir
    Path folder;

    private Batch batch;
    private String printed = "";

    @BeforeEach
    void aReleasedBatch() {
        try (Ledger ledger = Workbench.open(folder)) {
            batch = Workbench.batch(ledger);
            ledger.lots().add(lot(Lot.State.RELEASED));
            ledger.labels().write(batch.productId(), batch.version().orElseThrow(), LabelSheet.named("Toner"));
            append(ledger, new BatchEvent.Begun("first"));
            append(ledger, poured());
            String digest = ledger.attachments().put("count.txt", "<10".getBytes(StandardCharsets.UTF_8));
            append(ledger, new BatchEvent.Concerned(new Concern.Attached("count.txt", digest, 3)));
            ledger.seals()
                    .cover(batch.id(), "covers", Workbench.MORNING, "Ana", Map.of("rules/eu/annex-v.csv", "1,limit"));
            append(ledger, new BatchEvent.Decided(BatchEvent.Decision.RELEASED, "Ana", "", List.of()));
            printed = ledger.batches().headHash(batch.id()).orElseThrow();
        }
    }

    private static Lot lot(Lot.State state) {
        return new Lot(
                "W-1",
                "water",
                "S-1",
                "Invented Waters",
                Grams.of("1000"),
                LocalDate.of(2026, 3, 1),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                state,
                "");
    }

    private static BatchEvent poured() {
        return new BatchEvent.Poured(
                "Kettle",
                Optional.empty(),
                "water",
                Optional.of("W-1"),
                Grams.of("97.5"),
                BatchEvent.Purpose.LINE,
                "scale",
                "",
                "");
    }

    private void append(Ledger ledger, BatchEvent event) {
        ledger.batches().append(batch.id(), UUID.randomUUID().toString(), Workbench.MORNING, "Ana", event);
    }

    private Verdict verdict() {
        try (Ledger ledger = Workbench.open(folder)) {
            return ledger.seals().verify(batch.id(), Optional.of(printed));
        }
    }

    /** As somebody would who can write to the file: the triggers that refuse it are taken off first. */
    private List<String> after(String alteration) throws SQLException {
        for (String trigger : List.of(
                "log_entry_stays", "log_entry_remains", "kept_version_stays", "card_stays", "batch_identity_stays")) {
            Workbench.behindItsBack(folder, "drop trigger if exists " + trigger);
        }
        Workbench.behindItsBack(folder, alteration);
        return verdict().altered();
    }

    @Test
    void whatNobodyTouchedIsSoundAndCoversWhatItRefersTo() {
        Verdict verdict = verdict();
        assertThat(verdict.altered()).isEmpty();
        assertThat(verdict.matched()).contains(5);
        assertThat(verdict.headHash()).isEqualTo(printed);
        // batch, version, its two cards, label sheet, lot, rule table, document
        assertThat(verdict.covered()).isEqualTo(8);
    }

    @Test
    void laterEntriesAndALotThatIsUsedUpAreNoAlteration() {
        try (Ledger ledger = Workbench.open(folder)) {
            append(ledger, new BatchEvent.Noted("sold the first"));
            ledger.lots().change(lot(Lot.State.USED_UP));
        }
        assertThat(verdict().altered()).isEmpty();
        assertThat(verdict().matched()).contains(5);
    }

    @Test
    void aWeighingIsNamed() throws SQLException {
        assertThat(after("update log_entry set body = replace(body, '97.5', '97.4') where number = 2"))
                .anyMatch(says -> says.startsWith("Entry 2 is not what it was"))
                .anyMatch(says -> says.startsWith("No entry of batch"));
    }

    @Test
    void anEntryAndItsHashRewrittenThroughoutAreFoundByThePrintedHash() throws SQLException {
        // Somebody who recomputes every hash fools the chain, but not the sheet of paper.
        after("update log_entry set body = replace(body, 'first', 'fir5t') where number = 1");
        try (Ledger ledger = Workbench.open(folder)) {
            var links = ledger.batches().recomputed(batch.id());
            for (var link : links) {
                Workbench.behindItsBack(
                        folder,
                        "update log_entry set hash = '" + link.recomputed() + "' where number = " + link.number());
            }
            Workbench.behindItsBack(
                    folder,
                    "update batch set head_hash = '"
                            + links.get(links.size() - 1).recomputed() + "'");
        }
        assertThat(verdict().altered()).singleElement().asString().startsWith("No entry of batch");
    }

    @Test
    void anErasedEntryIsNamed() throws SQLException {
        Workbench.behindItsBack(folder, "delete from lot_use");
        assertThat(after("delete from log_entry where number = 2"))
                .anyMatch(says -> says.startsWith("Entry 2 is not what it was"));
    }

    @Test
    void aHashAndTheHeadHashAreNamed() throws SQLException {
        assertThat(after("update log_entry set hash = replace(hash, substr(hash, 1, 1), 'x') where number = 3"))
                .containsExactly("Entry 3 is not what it was, or its hash is not.");
        assertThat(after("update batch set head_hash = 'x' || substr(head_hash, 2)"))
                .anyMatch(says -> says.startsWith("Entry"));
    }

    @Test
    void theFormulaVersionIsNamed() throws SQLException {
        assertThat(after("update formula_version set body = replace(body, 'glycerin', 'glycerim')"))
                .contains("The formula version 1 is not what it was at the decision.");
    }

    @Test
    void theBatchItselfIsNamed() throws SQLException {
        assertThat(after("update batch set body = replace(body, '2026-03-02', '2026-03-03')"))
                .contains("The batch " + batch.code() + " is not what it was at the decision.");
    }

    @Test
    void aCardIsNamed() throws SQLException {
        assertThat(after(
                        "update card set body = replace(body, 'Glycerin', 'Glycerim') where material_key = 'glycerin'"))
                .containsExactly("The card glycerin revision 1 is not what it was at the decision.");
    }

    @Test
    void aLotsValueIsNamed() throws SQLException {
        assertThat(after("update lot set body = replace(body, 'S-1', 'S-2')"))
                .containsExactly("The lot W-1 is not what it was at the decision.");
    }

    @Test
    void theLabelSheetIsNamed() throws SQLException {
        assertThat(after("update label_sheet set body = replace(body, 'Toner', 'Toner!')"))
                .containsExactly("The label sheet 1 is not what it was at the decision.");
    }

    @Test
    void aRuleTableIsNamed() throws SQLException {
        assertThat(after("update attachment set body = cast('2,limit' as blob) where name like 'rule%'"))
                .containsExactly("The rule table rules/eu/annex-v.csv is not what it was.");
    }

    @Test
    void aPictureIsNamed() throws SQLException {
        try (Ledger ledger = Workbench.open(folder)) {
            String digest = ledger.attachments().put("picture.jpg", new byte[] {1, 2, 3});
            append(ledger, new BatchEvent.Pictured(digest, "after", ""));
        }
        Workbench.behindItsBack(folder, "update attachment set body = x'010204' where name = 'picture.jpg'");
        assertThat(verdict().altered()).singleElement().asString().contains("picture of entry");
    }

    @Test
    void aDocumentIsNamed() throws SQLException {
        assertThat(after("update attachment set body = cast('<11' as blob) where name = 'count.txt'"))
                .containsExactly("The document count.txt is not what it was.");
        assertThat(after("delete from attachment where name = 'count.txt'"))
                .containsExactly("The document count.txt is not in the data file any more.");
    }
}
