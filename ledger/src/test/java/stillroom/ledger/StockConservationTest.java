package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchEvent.LotPart;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.lot.StockedLot;

/** 10,000 random receipts, weighings, take-backs, strikes, namings of lots and counts: nothing is lost or made. */
class StockConservationTest {
    private static final int ACTS = 10_000;
    private static final int ACTS_PER_BATCH = 40;

    @TempDir
    Path folder = Path.of("");

    /** The book kept by hand beside the ledger's. */
    private final Map<String, BigDecimal> expected = new HashMap<>();

    private final List<Poured> pours = new ArrayList<>();
    private final Random random = new Random(10_000);
    private int received;
    private int counted;
    private int named;
    private int struck;

    /** A weighing of the batch in hand, and what it is charged to at this moment. */
    private record Poured(int entry, BigDecimal mass, Map<String, BigDecimal> charged) {}

    @Test
    void stockIsConservedToTheMicrogram() {
        try (Ledger ledger = Workbench.open(folder)) {
            FormulaVersion version = Workbench.keptVersion(ledger);
            for (int i = 0; i < 10; i++) {
                receive(ledger);
            }
            for (int done = 0; done < ACTS; done += ACTS_PER_BATCH) {
                Batch batch = ledger.batches()
                        .open(version.productId(), Optional.of(version.number()), "S-" + done, LocalDate.of(2026, 3, 2))
                        .orElseThrow();
                pours.clear();
                int from = done;
                ledger.together(() -> {
                    for (int i = 0; i < ACTS_PER_BATCH; i++) {
                        act(ledger, batch, from + i);
                    }
                    return true;
                });
            }
            for (StockedLot lot : ledger.lots().all()) {
                assertThat(lot.onHand().value())
                        .as(lot.lot().code())
                        .isEqualByComparingTo(expected.get(lot.lot().code()));
            }
            assertThat(List.of(received, counted, named, struck)).allMatch(times -> times > 200);
            assertThat(expected.values())
                    .as("the book ran below zero somewhere")
                    .anyMatch(left -> left.signum() < 0);
        }
    }

    private void receive(Ledger ledger) {
        String code = "L" + expected.size();
        BigDecimal mass = figure();
        ledger.lots().add(Workbench.lot(code, "glycerin", mass.toPlainString()));
        expected.put(code, mass);
        received++;
    }

    private String anyLot() {
        return "L" + random.nextInt(expected.size());
    }

    private void act(Ledger ledger, Batch batch, int number) {
        int kind = random.nextInt(20);
        if (kind == 0) {
            receive(ledger);
        } else if (kind <= 2) {
            String code = anyLot();
            BigDecimal found = figure();
            ledger.lots().countStock(code, new Grams(found), "counted", Workbench.MORNING, "Ana");
            expected.put(code, found);
            counted++;
        } else if (kind <= 4 && !pours.isEmpty()) {
            strike(ledger, batch, number);
        } else if (kind <= 7 && !pours.isEmpty()) {
            name(ledger, batch, number);
        } else {
            pour(ledger, batch, number);
        }
    }

    private void pour(Ledger ledger, Batch batch, int number) {
        String code = anyLot();
        BigDecimal mass = random.nextInt(5) == 0 ? figure().negate() : figure();
        boolean booked = random.nextInt(6) > 0;
        BatchEvent.Poured event = Workbench.poured(code, mass.toPlainString());
        BatchEvent.Poured poured = booked
                ? event
                : new BatchEvent.Poured(
                        event.vessel(),
                        event.lineId(),
                        event.materialKey(),
                        Optional.empty(),
                        event.mass(),
                        event.purpose(),
                        event.balance(),
                        "",
                        "");
        int entry = append(ledger, batch, number, poured);
        Map<String, BigDecimal> charged = new HashMap<>();
        if (booked) {
            charged.put(code, mass);
        }
        charge(charged, 1);
        pours.add(new Poured(entry, mass, charged));
    }

    private void strike(Ledger ledger, Batch batch, int number) {
        Poured pour = pours.remove(random.nextInt(pours.size()));
        append(ledger, batch, number, new BatchEvent.Struck(pour.entry(), "slip"));
        charge(pour.charged(), -1);
        struck++;
    }

    private void name(Ledger ledger, Batch batch, int number) {
        Poured pour = pours.remove(random.nextInt(pours.size()));
        BigDecimal first = pour.mass().divide(BigDecimal.valueOf(4)).setScale(6, java.math.RoundingMode.DOWN);
        String one = anyLot();
        String other = anyLot();
        Map<String, BigDecimal> charged = new HashMap<>();
        charged.merge(one, first, BigDecimal::add);
        charged.merge(other, pour.mass().subtract(first), BigDecimal::add);
        append(
                ledger,
                batch,
                number,
                new BatchEvent.LotsNamed(
                        pour.entry(),
                        List.of(
                                new LotPart(one, new Grams(first)),
                                new LotPart(other, new Grams(pour.mass().subtract(first)))),
                        "ran out"));
        charge(pour.charged(), -1);
        charge(charged, 1);
        pours.add(new Poured(pour.entry(), pour.mass(), charged));
        named++;
    }

    private void charge(Map<String, BigDecimal> charged, int sign) {
        charged.forEach(
                (code, mass) -> expected.merge(code, mass.multiply(BigDecimal.valueOf(-sign)), BigDecimal::add));
    }

    private static int append(Ledger ledger, Batch batch, int number, BatchEvent event) {
        return ledger.batches()
                .append(batch.id(), "act-" + number, Workbench.MORNING, "Ana", event)
                .number();
    }

    /** Up to a kilogram, to the microgram at most. */
    private BigDecimal figure() {
        return BigDecimal.valueOf(1 + random.nextInt(999_999_999), 6 - random.nextInt(4))
                .min(BigDecimal.valueOf(1000));
    }
}
