package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.groups.Tuple.tuple;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchStage;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.batch.BatchPage;
import stillroom.ledger.batch.BatchQuery;
import stillroom.ledger.batch.BatchRow;

final class BatchBookTest {
    private static final Instant NOW = Workbench.MORNING;

    @TempDir
    Path folder;

    private Ledger ledger;
    private Batch batch;

    @BeforeEach
    void openBatch() {
        ledger = Workbench.open(folder);
        batch = Workbench.batch(ledger);
        ledger.lots().add(Workbench.lot("G1", "glycerin", "1000"));
    }

    @AfterEach
    void close() {
        ledger.close();
    }

    private LogEntry append(String request, BatchEvent event) {
        return ledger.batches().append(batch.id(), request, NOW, "Ana", event);
    }

    private Grams onHand(String lot) {
        return ledger.lots().stock(lot).orElseThrow().onHand();
    }

    @Test
    void aDoubleTapMakesOneEntry() {
        LogEntry first = append("tap", Workbench.poured("G1", "12.5"));
        LogEntry second =
                ledger.batches().append(batch.id(), "tap", NOW.plusSeconds(1), "Ana", Workbench.poured("G1", "12.50"));
        assertThat(second).isEqualTo(first);
        assertThat(ledger.batches().log(batch.id())).containsExactly(first);
        assertThat(onHand("G1")).isEqualTo(Grams.of("987.5"));
    }

    @Test
    void aRequestDoesNotSwallowADifferentWeighing() {
        append("tap", Workbench.poured("G1", "12.5"));
        assertThatThrownBy(() -> append("tap", Workbench.poured("G1", "13")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("different");
        assertThat(onHand("G1")).isEqualTo(Grams.of("987.5"));
    }

    @Test
    void entriesAreNumberedAndChained() {
        append("1", new BatchEvent.Begun(""));
        String head = ledger.batches().headHash(batch.id()).orElseThrow();
        LogEntry second = append("2", new BatchEvent.Noted("x"));
        assertThat(second.number()).isEqualTo(2);
        assertThat(ledger.batches().headHash(batch.id()).orElseThrow())
                .matches("[0-9a-f]{64}")
                .isNotEqualTo(head);
        assertThat(ledger.batches().firstAltered(batch.id())).isEmpty();
    }

    @Test
    void anAlteredEntryShows() throws Exception {
        append("1", new BatchEvent.Begun(""));
        append("2", Workbench.poured("G1", "12.5"));
        append("3", new BatchEvent.Noted("x"));
        Workbench.behindItsBack(folder, "drop trigger log_entry_stays");
        Workbench.behindItsBack(folder, "update log_entry set body = replace(body, '12.5', '12.4') where number = 2");
        assertThat(ledger.batches().firstAltered(batch.id())).contains(2);
    }

    @Test
    void aTruncatedLogShows() throws Exception {
        append("1", new BatchEvent.Begun(""));
        append("2", new BatchEvent.Noted("x"));
        Workbench.behindItsBack(folder, "drop trigger log_entry_remains");
        Workbench.behindItsBack(folder, "delete from log_entry where number = 2");
        assertThat(ledger.batches().firstAltered(batch.id())).contains(2);
    }

    @Test
    void aStruckWeighingReturnsToTheLotAndAStruckStrikeTakesItAgain() {
        append("1", Workbench.poured("G1", "100"));
        append("2", new BatchEvent.Struck(1, "wrong bottle"));
        assertThat(onHand("G1")).isEqualTo(Grams.of("1000"));
        assertThat(ledger.batches().holding("G1")).isEmpty();
        append("3", new BatchEvent.Struck(2, "it was right after all"));
        assertThat(onHand("G1")).isEqualTo(Grams.of("900"));
        assertThat(ledger.batches().holding("G1"))
                .singleElement()
                .satisfies(use -> assertThat(use.mass()).isEqualTo(Grams.of("100")));
    }

    @Test
    void onlyAnEntryInTheLogCanBeStruck() {
        assertThatThrownBy(() -> append("1", new BatchEvent.Struck(1, "itself")))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(ledger.batches().log(batch.id())).isEmpty();
    }

    @Test
    void traceFollowsALotIntoBulkHandedOver() {
        append("1", Workbench.poured("G1", "100"));
        Batch other = ledger.batches()
                .open(batch.productId(), Optional.empty(), "other", Workbench.DAY)
                .orElseThrow();
        BatchEvent bulk = new BatchEvent.BulkReceived(
                "B",
                batch.code(),
                List.of(new BatchEvent.BulkPart("glycerin", Optional.of("G1"), Optional.empty(), Grams.of("40"))),
                Grams.ZERO);
        ledger.batches().append(other.id(), "b", NOW, "Ana", bulk);
        assertThat(ledger.batches().holding("G1"))
                .extracting(use -> use.row().batch().code(), use -> use.mass())
                .containsExactly(tuple("other", Grams.of("40")), tuple(batch.code(), Grams.of("100")));
        assertThat(onHand("G1")).as("bulk was weighed from the bottle once").isEqualTo(Grams.of("900"));
    }

    @Test
    void stageFollowsTheLog() {
        assertThat(stage()).isEqualTo(BatchStage.PLANNED);
        append("1", new BatchEvent.Begun(""));
        assertThat(stage()).isEqualTo(BatchStage.IN_WORK);
        Instant due = NOW.plusSeconds(86_400);
        append("2", new BatchEvent.RestBegun(due, "thickness"));
        assertThat(row()).satisfies(row -> {
            assertThat(row.stage()).isEqualTo(BatchStage.RESTING);
            assertThat(row.due()).contains(due);
            assertThat(row.entries()).isEqualTo(2);
            assertThat(row.lastAt()).contains(NOW);
        });
        append("3", new BatchEvent.RestEnded(""));
        assertThat(row().due()).isEmpty();
        append("4", new BatchEvent.Filled("beaker", "bottle", 3, Grams.of("300"), Optional.empty(), ""));
        assertThat(stage()).isEqualTo(BatchStage.FILLED);
        append("5", new BatchEvent.Decided(BatchEvent.Decision.RELEASED, "Ana", "", List.of()));
        assertThat(stage()).isEqualTo(BatchStage.RELEASED);
        assertThat(ledger.batches().unfinished()).isEmpty();
    }

    private BatchRow row() {
        return ledger.batches().row(batch.id()).orElseThrow();
    }

    private BatchStage stage() {
        return row().stage();
    }

    @Test
    void dueBatchesStandFirst() {
        Batch late = open("late");
        Batch soon = open("soon");
        rest(late, 200);
        rest(soon, 100);
        assertThat(ledger.batches().unfinished())
                .extracting(row -> row.batch().code())
                .containsExactly("soon", "late", batch.code());
    }

    private void rest(Batch resting, long seconds) {
        BatchEvent rest = new BatchEvent.RestBegun(NOW.plusSeconds(seconds), "");
        ledger.batches().append(resting.id(), "rest", NOW, "Ana", rest);
    }

    private Batch open(String code) {
        return ledger.batches()
                .open(batch.productId(), batch.version(), code, Workbench.DAY)
                .orElseThrow();
    }

    @Test
    void pagesAreCutFromTheNewestAndFiltered() {
        for (int i = 0; i < 7; i++) {
            open("x%_" + i);
        }
        BatchPage page = ledger.batches().page(BatchQuery.ALL, 2, 3);
        assertThat(page.total()).isEqualTo(8);
        assertThat(page.rows()).extracting(row -> row.batch().code()).containsExactly("x%_4", "x%_3", "x%_2");
        BatchQuery begins = new BatchQuery(Set.of(BatchStage.PLANNED), Optional.of(batch.productId()), "x%_");
        assertThat(ledger.batches().page(begins, 0, 50).total()).isEqualTo(7);
        BatchQuery released = new BatchQuery(Set.of(BatchStage.RELEASED), Optional.empty(), "");
        assertThat(ledger.batches().page(released, 0, 50).rows()).isEmpty();
        assertThat(ledger.batches().fromVersion(batch.productId(), 1)).hasSize(8);
    }

    @Test
    void aTakenCodeOpensNothingAndTheProposalAvoidsIt() {
        assertThat(batch.code()).isEqualTo("260302-1");
        assertThat(ledger.batches().proposeCode(Workbench.DAY)).isEqualTo("260302-2");
        assertThat(ledger.batches().open(batch.productId(), batch.version(), batch.code(), Workbench.DAY))
                .isEmpty();
        assertThat(ledger.batches().page(BatchQuery.ALL, 0, 9).total()).isEqualTo(1);
    }

    @Test
    void aBatchNeedsAKeptVersion() {
        ledger.products()
                .newVersion(batch.productId(), Optional.of(1), Workbench.formula("6"), "more", Workbench.MORNING);
        for (int version : new int[] {2, 99}) {
            assertThatThrownBy(() ->
                            ledger.batches().open(batch.productId(), Optional.of(version), "draft", Workbench.DAY))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("not kept");
        }
        assertThatThrownBy(() -> ledger.batches().open(99, Optional.empty(), "none", Workbench.DAY))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void unknownIdsAnswerEmptyOrAreRefused() {
        assertThat(ledger.batches().batch(99)).isEmpty();
        assertThat(ledger.batches().byCode("none")).isEmpty();
        assertThat(ledger.batches().log(99)).isEmpty();
        assertThatThrownBy(() -> ledger.batches().append(99, "1", NOW, "Ana", new BatchEvent.Begun("")))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
