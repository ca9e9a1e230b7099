package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchStage;
import stillroom.formulary.concern.Concern;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.trace.Reach;
import stillroom.ledger.trace.TraceBook;
import stillroom.ledger.trace.TraceStart;
import stillroom.ledger.trace.TraceStart.Kind;

final class TraceBookTest {
    @TempDir
    Path folder;

    private Ledger ledger;

    @BeforeEach
    void open() {
        ledger = Workbench.open(folder);
    }

    @AfterEach
    void close() {
        ledger.close();
    }

    private Batch batch(String code) {
        Batch first = Workbench.batch(ledger);
        return first.code().equals(code)
                ? first
                : ledger.batches()
                        .open(first.productId(), Optional.empty(), code, LocalDate.of(2026, 11, 25))
                        .orElseThrow();
    }

    private int append(Batch batch, BatchEvent event) {
        return ledger.batches()
                .append(batch.id(), UUID.randomUUID().toString(), Workbench.MORNING, "Ana", event)
                .number();
    }

    private static BatchEvent.Poured poured(String lot, String vessel) {
        return new BatchEvent.Poured(
                vessel,
                Optional.empty(),
                "water",
                Optional.of(lot),
                Grams.of("10"),
                BatchEvent.Purpose.LINE,
                "Fine scale",
                "",
                "");
    }

    private static List<TraceBook.Origin> ofLot(String lot) {
        return List.of(new TraceBook.Origin(Optional.of(lot), Optional.empty(), Grams.of("1")));
    }

    private List<String> codes(Reach reach) {
        return reach.batches().stream().map(one -> one.row().batch().code()).toList();
    }

    /** Raw lot into a batch, a premix out of that, a premix of the premix, into a batch, and its bulk into another. */
    @Test
    void aLotIsFollowedThroughPremixesOfPremixesAndDividedBulk() {
        Batch first = batch("P-1");
        append(first, poured("RAW", "Beaker"));
        ledger.traces()
                .madeFrom("PRE", List.of(new TraceBook.Origin(Optional.empty(), Optional.of("P-1"), Grams.of("5"))));
        ledger.traces().madeFrom("PREPRE", ofLot("PRE"));
        Batch second = batch("P-2");
        append(second, poured("PREPRE", "Kettle"));
        Batch third = batch("P-3");
        append(
                third,
                new BatchEvent.BulkReceived(
                        "Jug",
                        "P-2",
                        List.of(new BatchEvent.BulkPart("water", Optional.empty(), Optional.empty(), Grams.of("2"))),
                        Grams.ZERO));
        Batch other = batch("P-4");
        append(other, poured("OTHER", "Beaker"));

        Reach reach = ledger.traces().reach(TraceStart.of(Kind.LOT, "RAW"));
        assertThat(codes(reach)).containsExactly("P-3", "P-2", "P-1");
        assertThat(reach.lots().stream().map(Reach.ReachedLot::code)).containsExactlyInAnyOrder("RAW", "PRE", "PREPRE");
        assertThat(reach.batches().get(2).direct()).isEqualTo(Grams.of("10"));
        assertThat(ledger.traces().sourcesOfBatch("P-3").lots().stream()
                        .filter(lot -> lot.raw())
                        .map(lot -> lot.code()))
                .containsExactly("RAW");
        assertThat(ledger.traces().sourcesOfLot("PREPRE").batchCodes()).containsExactly("P-1");
    }

    @Test
    void aVesselABalanceAPersonAndATimeAreFollowedToo() {
        Batch one = batch("P-1");
        append(one, poured("RAW", "Kettle"));
        Batch two = batch("P-2");
        int entry = append(two, poured("RAW", "Beaker"));
        assertThat(codes(ledger.traces().reach(TraceStart.of(Kind.VESSEL, " kettle"))))
                .containsExactly("P-1");
        assertThat(codes(ledger.traces().reach(TraceStart.of(Kind.BALANCE, "FINE scale"))))
                .containsExactly("P-2", "P-1");
        assertThat(codes(ledger.traces().reach(TraceStart.of(Kind.PERSON, "ana"))))
                .hasSize(2);
        assertThat(codes(ledger.traces().reach(TraceStart.time(Workbench.MORNING, Workbench.MORNING.plusSeconds(1)))))
                .hasSize(2);
        assertThat(codes(ledger.traces()
                        .reach(TraceStart.time(Workbench.MORNING.plusSeconds(1), Workbench.MORNING.plusSeconds(9)))))
                .isEmpty();
        append(two, new BatchEvent.Struck(entry, "wrong batch"));
        assertThat(codes(ledger.traces().reach(TraceStart.of(Kind.VESSEL, "Beaker"))))
                .isEmpty();
        assertThat(codes(ledger.traces().reach(TraceStart.of(Kind.LOT, "RAW")))).containsExactly("P-1");
        assertThat(ledger.traces().known("Kettle")).containsExactly(Kind.VESSEL);
    }

    @Test
    void theUnitsOfAPackLotAreFoundWhereTheyWent() {
        Batch one = batch("P-1");
        append(one, poured("RAW", "Kettle"));
        append(
                one,
                new BatchEvent.Filled(
                        "Kettle", "bottle", 10, Grams.of("9"), Optional.empty(), "", Optional.of("GLASS-1")));
        append(one, new BatchEvent.Decided(BatchEvent.Decision.RELEASED, "Ana", "", List.of()));
        append(one, moved(Concern.Move.SALE, 6, "Corner shop"));
        append(one, moved(Concern.Move.RETURN, 1, "Corner shop"));
        append(one, moved(Concern.Move.WITHDRAWN, 1, ""));
        append(one, new BatchEvent.Concerned(new Concern.UnitsCounted(3, "")));
        Reach.ReachedBatch reached = ledger.traces()
                .reach(TraceStart.of(Kind.PACK_LOT, "glass-1"))
                .batches()
                .get(0);
        assertThat(reached.units().out()).isEqualTo(5);
        assertThat(reached.units().byBook()).isEqualTo(4);
        assertThat(reached.units().onShelf()).isEqualTo(3);
        assertThat(reached.units().accountedFor()).isEqualTo(9);
        assertThat(reached.units().reconciledPercent().orElseThrow()).isEqualByComparingTo("90");
        assertThat(reached.units().at()).containsEntry("Corner shop", 5);
    }

    @Test
    void aHoldStopsTheBatchUntilItIsLifted() {
        Batch one = batch("P-1");
        int hold = append(
                one, new BatchEvent.Concerned(new Concern.Stopped(Concern.Stop.HOLD, "lot RAW", Optional.empty())));
        assertThat(ledger.batches().row(one.id()).orElseThrow().stage()).isEqualTo(BatchStage.HELD);
        assertThat(ledger.batches().unfinished().stream().map(row -> row.batch().code()))
                .contains("P-1");
        append(one, new BatchEvent.Concerned(new Concern.GoneOn(hold, "the certificate came")));
        assertThat(ledger.batches().row(one.id()).orElseThrow().stage()).isEqualTo(BatchStage.PLANNED);
    }

    private static BatchEvent moved(Concern.Move move, int units, String to) {
        return new BatchEvent.Concerned(new Concern.Moved(move, units, LocalDate.of(2026, 11, 25), to, ""));
    }
}
