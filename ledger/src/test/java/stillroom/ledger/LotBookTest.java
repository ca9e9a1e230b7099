package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.material.Lot;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.lot.StockCount;
import stillroom.ledger.lot.StockedLot;

final class LotBookTest {
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

    @Test
    void aTakenCodeStoresNothing() {
        assertThat(ledger.lots().add(Workbench.lot("G1", "glycerin", "10"))).isTrue();
        assertThat(ledger.lots().add(Workbench.lot("G1", "water", "99"))).isFalse();
        assertThat(ledger.lots().lot("G1").orElseThrow().lot().materialKey()).isEqualTo("glycerin");
    }

    @Test
    void lotsStandFirstExpiredFirst() {
        ledger.lots().add(expiring("late", "2027-01-01"));
        ledger.lots().add(Workbench.lot("never", "glycerin", "10"));
        ledger.lots().add(expiring("soon", "2026-05-01"));
        ledger.lots().add(Workbench.lot("other", "water", "10"));
        assertThat(ledger.lots().ofMaterial("glycerin"))
                .extracting(stocked -> stocked.lot().code())
                .containsExactly("soon", "late", "never");
        assertThat(ledger.lots().all()).hasSize(4);
    }

    private static Lot expiring(String code, String day) {
        Lot lot = Workbench.lot(code, "glycerin", "10");
        return new Lot(
                code,
                lot.materialKey(),
                lot.supplierLot(),
                lot.supplier(),
                lot.received(),
                lot.receivedOn(),
                Optional.empty(),
                Optional.of(LocalDate.parse(day)),
                Optional.empty(),
                Lot.State.RELEASED,
                "");
    }

    @Test
    void factsOfALotChangeButNotWhatWasDelivered() {
        ledger.lots().add(Workbench.lot("G1", "glycerin", "10"));
        Lot changed = expiring("G1", "2026-05-01");
        ledger.lots().change(changed);
        assertThat(ledger.lots().lot("G1").orElseThrow().lot()).isEqualTo(changed);
        assertThatThrownBy(() -> ledger.lots().change(Workbench.lot("G1", "glycerin", "11")))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ledger.lots().change(Workbench.lot("none", "glycerin", "10")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aCountMendsTheBook() {
        ledger.lots().add(Workbench.lot("G1", "glycerin", "10"));
        StockCount count = ledger.lots().countStock("G1", Grams.of("7.25"), "spilt", Workbench.MORNING, "Ana");
        assertThat(count.correction()).isEqualTo(Grams.of("-2.75"));
        assertThat(ledger.lots().stock("G1").orElseThrow().onHand()).isEqualTo(Grams.of("7.25"));
        assertThat(ledger.lots().counts("G1")).containsExactly(count);
    }

    @Test
    void theBookMayRunBelowZeroAndTakesInABottleBookedLate() {
        Batch batch = Workbench.batch(ledger);
        ledger.batches().append(batch.id(), "1", Workbench.MORNING, "Ana", Workbench.poured("late", "30"));
        assertThat(ledger.lots().stock("late")).isEmpty();
        ledger.lots().add(Workbench.lot("late", "glycerin", "20"));
        assertThat(ledger.lots().stock("late").orElseThrow().onHand()).isEqualTo(Grams.of("-10"));
    }

    /** Stock is conserved to the microgram over random receipts, pourings, strikes and counts, against sums kept apart. */
    @Test
    void stockIsConserved() {
        Random random = new Random(20260302);
        Batch batch = Workbench.batch(ledger);
        List<BigDecimal> expected = new ArrayList<>();
        ledger.together(() -> {
            for (int i = 0; i < 20; i++) {
                BigDecimal received = figure(random);
                ledger.lots().add(Workbench.lot("L" + i, "glycerin", received.toPlainString()));
                expected.add(received);
            }
            for (int i = 0; i < 1000; i++) {
                step(random, batch, expected, i);
            }
            return true;
        });
        List<StockedLot> lots = ledger.lots().all();
        assertThat(lots).hasSize(20);
        for (StockedLot stocked : lots) {
            int number = Integer.parseInt(stocked.lot().code().substring(1));
            assertThat(stocked.onHand()).isEqualTo(new Grams(expected.get(number)));
        }
    }

    private void step(Random random, Batch batch, List<BigDecimal> expected, int i) {
        int lot = random.nextInt(20);
        BigDecimal mass = figure(random);
        if (random.nextInt(10) == 0) {
            ledger.lots().countStock("L" + lot, new Grams(mass), "", Workbench.MORNING, "Ana");
            expected.set(lot, mass);
            return;
        }
        boolean back = random.nextInt(4) == 0;
        BigDecimal poured = back ? mass.negate() : mass;
        int entry = append(batch, "p" + i, Workbench.poured("L" + lot, poured.toPlainString()));
        if (random.nextInt(5) == 0) {
            append(batch, "s" + i, new BatchEvent.Struck(entry, "slip"));
        } else {
            expected.set(lot, expected.get(lot).subtract(poured));
        }
    }

    private int append(Batch batch, String request, BatchEvent event) {
        return ledger.batches()
                .append(batch.id(), request, Workbench.MORNING, "Ana", event)
                .number();
    }

    private static BigDecimal figure(Random random) {
        return BigDecimal.valueOf(random.nextInt(1_000_000_000), random.nextInt(7));
    }
}
