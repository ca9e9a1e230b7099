package stillroom.formulary.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillroom.formulary.hygiene.HoldKind;
import stillroom.formulary.hygiene.HoldLimits;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.StarterLibrary;
import stillroom.formulary.quantity.Grams;

/** All invented. */
final class HoldsTest {
    private static final MaterialBook BOOK = StarterLibrary.load();
    private static final Instant START = Instant.parse("2026-11-25T08:00:00Z");
    private static final HoldLimits LIMITS = new HoldLimits(10, 100, 4, 72);

    private final List<LogEntry> log = new ArrayList<>();

    private void at(int hour, BatchEvent event) {
        log.add(new LogEntry(log.size() + 1, START.plus(Duration.ofHours(hour)), "Ana", event));
    }

    private static BatchEvent pour(String vessel, String material) {
        return new BatchEvent.Poured(
                vessel,
                Optional.empty(),
                material,
                Optional.empty(),
                Grams.of("10"),
                BatchEvent.Purpose.LINE,
                "scale",
                "",
                "");
    }

    private List<Hold> holds(int nowHour) {
        return Holds.of(log, BatchState.of(log), LIMITS, BOOK, START.plus(Duration.ofHours(nowHour)));
    }

    private static Hold one(List<Hold> holds, String vessel, HoldKind kind) {
        return holds.stream()
                .filter(hold -> hold.vessel().equals(vessel) && hold.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aPhaseStandsUntilItIsJoinedAndTheBulkUntilItIsFilled() {
        at(0, pour("Oil pan", "caprylic-capric-triglyceride"));
        at(1, pour("Kettle", "water-purified"));
        at(12, new BatchEvent.Combined("Oil pan", "Kettle", Optional.empty(), Optional.empty()));
        at(13, pour("Kettle", "sodium-benzoate"));
        at(120, new BatchEvent.Filled("Kettle", "jar", 2, Grams.of("30"), Optional.empty(), ""));
        List<Hold> holds = holds(500);
        assertThat(one(holds, "Oil pan", HoldKind.PHASE).hours()).isEqualTo(12);
        assertThat(one(holds, "Oil pan", HoldKind.PHASE).over()).isTrue();
        assertThat(one(holds, "Kettle", HoldKind.PHASE).hours()).isEqualTo(11);
        assertThat(one(holds, "Kettle", HoldKind.BULK).hours()).isEqualTo(108);
        assertThat(one(holds, "Kettle", HoldKind.BULK).over()).isTrue();
        assertThat(one(holds, "Kettle", HoldKind.SLURRY).hours()).isEqualTo(12);
    }

    @Test
    void theOnlyVesselHoldsBulkAndStillStandsWhereNothingIsFilled() {
        at(0, pour("Kettle", "water-purified"));
        assertThat(one(holds(4), "Kettle", HoldKind.SLURRY).over()).isFalse();
        assertThat(one(holds(5), "Kettle", HoldKind.SLURRY).over()).isTrue();
        at(6, pour("Kettle", "sodium-benzoate"));
        assertThat(one(holds(50), "Kettle", HoldKind.SLURRY).hours()).isEqualTo(6);
        assertThat(one(holds(50), "Kettle", HoldKind.BULK).hours()).isEqualTo(50);
    }

    @Test
    void anOverrunHoldsTheReleaseUntilItIsExplained() {
        at(0, pour("Kettle", "water-purified"));
        at(6, pour("Kettle", "sodium-benzoate"));
        assertThat(gate("holds").met()).isFalse();
        assertThat(gate("holds").says()).contains("Kettle (unpreserved, with water) stood 6 h, allowed are 4 h");
        at(
                7,
                new BatchEvent.Concerned(
                        new stillroom.formulary.concern.Concern.Explained("hold slurry Kettle", "boiled meanwhile")));
        assertThat(gate("holds").met()).isTrue();
    }

    @Test
    void anAwaitedResultHoldsTheReleaseUntilItIsIn() {
        at(0, pour("Kettle", "water-purified"));
        at(
                1,
                new BatchEvent.Concerned(new stillroom.formulary.concern.Concern.Stopped(
                        stillroom.formulary.concern.Concern.Stop.AWAIT, "plate count", Optional.empty())));
        assertThat(gate("results").met()).isFalse();
        assertThat(gate("results").says()).contains("plate count");
        at(2, new BatchEvent.Concerned(new stillroom.formulary.concern.Concern.GoneOn(2, "<10 CFU/g")));
        assertThat(gate("results").met()).isTrue();
    }

    private ReleaseGate gate(String name) {
        BatchState state = BatchState.of(log);
        return ReleaseGate.of(
                        state,
                        AsMade.of(state, stillroom.formulary.formula.Formula.EMPTY, BOOK),
                        stillroom.formulary.formula.Formula.EMPTY,
                        stillroom.formulary.formula.Brief.of(stillroom.formulary.formula.ProductType.TONER),
                        List.of(),
                        holds(8))
                .stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aPremixThatStoodTooLongHoldsTheReleaseUnlessItsPourSaysWhy() {
        at(1, premix("PMX-1", ""));
        at(2, premix("PMX-2", "looked at and tested"));
        BatchState state = BatchState.of(log);
        Instant early = START.minus(Duration.ofHours(72));
        List<Hold> holds = PremixHolds.of(state, Map.of("PMX-1", early, "PMX-2", early, "PMX-3", early), LIMITS);
        assertThat(holds)
                .extracting(Hold::says)
                .containsExactly(
                        "PMX-1 (premix) stood 73 h, allowed are 72 h", "PMX-2 (premix) stood 74 h, allowed are 72 h");
        assertThat(holds).allMatch(Hold::over);
        assertThat(holds.get(0).reason(state)).isEmpty();
        assertThat(holds.get(1).reason(state)).contains("looked at and tested");
        List<Hold> intime = PremixHolds.of(state, Map.of("PMX-1", early.plus(Duration.ofHours(1))), LIMITS);
        assertThat(intime).singleElement().matches(hold -> !hold.over());
    }

    private static BatchEvent premix(String lot, String note) {
        return new BatchEvent.Poured(
                "Kettle",
                Optional.empty(),
                "water-purified",
                Optional.of(lot),
                Grams.of("10"),
                BatchEvent.Purpose.LINE,
                "scale",
                "",
                note);
    }
}
