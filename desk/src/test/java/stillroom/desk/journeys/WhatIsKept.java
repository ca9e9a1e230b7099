package stillroom.desk.journeys;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.batch.AsMade;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchStage;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.batch.MadeLine;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Line;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;
import stillroom.ledger.Ledger;

/** What must stand on disk after the road was walked. */
final class WhatIsKept {
    /** 300 + 35.5 + 23 + 2.5 + 100 + 40 + 1.5 + 0.4 [g] */
    private static final double PUT_IN = 502.9;

    private WhatIsKept() {}

    static void afterTheFirstDay(Ledger ledger) {
        assertThat(ledger.settings().read().name()).isEqualTo("Hill bench");
        assertThat(state(ledger).stage()).isEqualTo(BatchStage.RESTING);
        assertThat(ledger.lots().stock(WholeRoad.LOT).orElseThrow().onHand()).isEqualTo(Grams.of("300"));
        FormulaVersion version = ledger.products().version(product(ledger), 1).orElseThrow();
        assertThat(version.kept()).isTrue();
        assertThat(version.formula().phases())
                .extracting(phase -> phase.name())
                .containsExactly("Water phase", "Surfactants", "Adjusting");
        assertThat(amount(version, "water-purified")).isEqualTo(new Amount.ToHundred());
        assertThat(amount(version, "citric-acid-50")).isInstanceOf(Amount.ToReading.class);
    }

    static void atTheEnd(Ledger ledger) {
        Batch batch = batch(ledger);
        BatchState state = state(ledger);
        assertThat(state.stage()).isEqualTo(BatchStage.RELEASED);
        assertThat(events(ledger, BatchEvent.Poured.class))
                .extracting(poured -> poured.mass().toString())
                .containsExactly("300", "35.5", "23", "2.5", "100", "40", "1.5", "0.4");
        assertThat(ledger.batches().log(batch.id()))
                .extracting(entry -> entry.event().getClass().getSimpleName())
                .contains(
                        "Planned",
                        "VesselReady",
                        "LineAccepted",
                        "StepDone",
                        "Combined",
                        "ReadingTaken",
                        "RestBegun",
                        "RestEnded",
                        "Filled",
                        "Decided");
        assertThat(events(ledger, BatchEvent.ReadingTaken.class))
                .extracting(reading -> reading.value())
                .containsExactly(Optional.of(5.9), Optional.of(4.9), Optional.of(5.0));
        asMade(ledger, state);
        carried(ledger);
    }

    private static void asMade(Ledger ledger, BatchState state) {
        FormulaVersion made = ledger.products().version(product(ledger), 1).orElseThrow();
        AsMade asMade = AsMade.of(state, made.formula(), ledger.materials().book());
        assertThat(asMade.added()).isEqualTo(Grams.of("502.9"));
        // Shares of what was put in; four decimals are shown at most.
        assertThat(share(asMade, "water-purified")).isCloseTo(335.5 / PUT_IN * 100, within(1e-4));
        assertThat(share(asMade, "glycerin-86")).isCloseTo(23 / PUT_IN * 100, within(1e-4));
        assertThat(share(asMade, "cocamidopropyl-betaine-30")).isCloseTo(100 / PUT_IN * 100, within(1e-4));
        assertThat(share(asMade, "citric-acid-50")).isCloseTo(1.9 / PUT_IN * 100, within(2e-4));
    }

    private static double share(AsMade made, String material) {
        return made.lines().stream()
                .filter(line -> line.materialKey().equals(material))
                .map(MadeLine::made)
                .mapToDouble(percent -> percent.value().doubleValue())
                .sum();
    }

    private static void carried(Ledger ledger) {
        FormulaVersion carried = ledger.products().version(product(ledger), 2).orElseThrow();
        assertThat(carried.kept()).isFalse();
        assertThat(carried.basedOn()).contains(1);
        assertThat(amount(carried, "water-purified")).isEqualTo(new Amount.ToHundred());
        // 23 g of 502.9 g, as the workshop shows percentages
        assertThat(amount(carried, "glycerin-86")).isEqualTo(new Amount.Fixed(Percent.of("4.57")));
    }

    private static Amount amount(FormulaVersion version, String material) {
        return version.formula().lines().stream()
                .filter(line -> line.materialKey().equals(material))
                .map(Line::amount)
                .findFirst()
                .orElseThrow();
    }

    private static <E extends BatchEvent> List<E> events(Ledger ledger, Class<E> kind) {
        return ledger.batches().log(batch(ledger).id()).stream()
                .map(LogEntry::event)
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    private static BatchState state(Ledger ledger) {
        return BatchState.of(ledger.batches().log(batch(ledger).id()));
    }

    private static Batch batch(Ledger ledger) {
        return ledger.batches().byCode(WholeRoad.BATCH).orElseThrow();
    }

    private static long product(Ledger ledger) {
        return batch(ledger).productId();
    }
}
