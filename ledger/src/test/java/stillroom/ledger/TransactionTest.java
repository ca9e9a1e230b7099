package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.quantity.Grams;

final class TransactionTest {
    @TempDir
    Path folder;

    @Test
    void togetherIsAllOrNothing() {
        try (Ledger ledger = Workbench.open(folder)) {
            assertThatThrownBy(() -> ledger.together(() -> {
                        Workbench.product(ledger);
                        assertThat(ledger.products().products())
                                .as("seen inside")
                                .hasSize(1);
                        throw new IllegalStateException("power cut");
                    }))
                    .hasMessage("power cut");
            assertThat(ledger.products().products()).isEmpty();
        }
    }

    @Test
    void aFailedPartSpoilsTheWholeEvenWhereItWasCaught() {
        try (Ledger ledger = Workbench.open(folder)) {
            assertThatThrownBy(() -> ledger.together(() -> {
                        Workbench.product(ledger);
                        try {
                            ledger.lots().change(Workbench.lot("none", "water", "1"));
                        } catch (IllegalArgumentException e) {
                            return "went on";
                        }
                        return "not reached";
                    }))
                    .isInstanceOf(IllegalStateException.class);
            assertThat(ledger.products().products()).isEmpty();
        }
    }

    @Test
    void manyHandsAtOnceLoseNothing() throws Exception {
        try (Ledger ledger = Workbench.open(folder)) {
            Batch batch = Workbench.batch(ledger);
            ledger.lots().add(Workbench.lot("G1", "glycerin", "1000"));
            ExecutorService hands = Executors.newFixedThreadPool(12);
            List<Future<LogEntry>> pourings = new ArrayList<>();
            for (int i = 0; i < 120; i++) {
                String request = "r" + i;
                pourings.add(hands.submit(() -> {
                    ledger.batches().log(batch.id());
                    return ledger.batches()
                            .append(batch.id(), request, Workbench.MORNING, "Ana", Workbench.poured("G1", "0.5"));
                }));
            }
            List<LogEntry> made = new ArrayList<>();
            for (Future<LogEntry> pouring : pourings) {
                made.add(pouring.get());
            }
            hands.shutdown();
            assertThat(ledger.batches().log(batch.id())).containsExactlyInAnyOrderElementsOf(made);
            assertThat(ledger.lots().stock("G1").orElseThrow().onHand()).isEqualTo(Grams.of("940"));
            assertThat(ledger.batches().firstAltered(batch.id())).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "update log_entry set body = '{}'",
                "update log_entry set hash = 'x' where number = 1",
                "delete from log_entry",
                "update formula_version set body = '{}'",
                "update formula_version set kept = 0",
                "delete from formula_version",
                "update card set body = '{}'",
                "delete from card",
                "update stock_count set correction_ug = 0",
                "delete from stock_count",
                "update batch set code = 'x'",
                "update batch set version = null",
                "delete from batch"
            })
    void theFileItselfRefusesToRewriteThePast(String statement) {
        try (Ledger ledger = Workbench.open(folder)) {
            Batch batch = Workbench.batch(ledger);
            ledger.lots().add(Workbench.lot("G1", "glycerin", "10"));
            ledger.lots().countStock("G1", Grams.of("9"), "", Workbench.MORNING, "Ana");
            ledger.batches().append(batch.id(), "1", Workbench.MORNING, "Ana", new BatchEvent.Begun(""));
            assertThatThrownBy(() -> Workbench.behindItsBack(folder, statement))
                    .isInstanceOf(SQLException.class)
                    .hasMessageContaining("never");
            assertThat(ledger.batches().firstAltered(batch.id())).isEmpty();
        }
    }
}
