package stillroom.formulary.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillroom.formulary.Problem;
import stillroom.formulary.hygiene.Cleaning;
import stillroom.formulary.hygiene.Standing;
import stillroom.formulary.hygiene.Tool;
import stillroom.formulary.hygiene.Use;
import stillroom.formulary.material.StarterLibrary;
import stillroom.formulary.quantity.Grams;

/** All invented. */
final class SanitisedVesselTest {
    private static final Instant NOW = Instant.parse("2026-11-25T09:30:00Z");
    private static final Tool KETTLE = new Tool("Kettle", true, Optional.empty(), Optional.empty(), 12, "");

    private static Cleaning sanitised(int hoursAgo) {
        return new Cleaning(NOW.minus(Duration.ofHours(hoursAgo)), "Ana", Cleaning.Act.SANITISED, "steam");
    }

    private static Optional<Use> used(int hoursAgo) {
        return Optional.of(new Use(NOW.minus(Duration.ofHours(hoursAgo)), "B-1", "Balm"));
    }

    private static Standing.State state(List<Cleaning> acts, Optional<Use> use) {
        return Standing.of(KETTLE, acts, use, NOW).state();
    }

    @Test
    void theStateFollowsFromWhatCameLast() {
        assertThat(state(List.of(), Optional.empty())).isEqualTo(Standing.State.UNKNOWN);
        assertThat(state(List.of(), used(1))).isEqualTo(Standing.State.DIRTY);
        assertThat(state(List.of(sanitised(2)), used(3))).isEqualTo(Standing.State.SANITISED);
        assertThat(state(List.of(sanitised(12)), used(30))).isEqualTo(Standing.State.SANITISED);
        assertThat(state(List.of(sanitised(13)), used(30))).isEqualTo(Standing.State.EXPIRED);
        assertThat(state(List.of(sanitised(2)), used(1))).isEqualTo(Standing.State.DIRTY);
        assertThat(state(
                        List.of(sanitised(2), new Cleaning(NOW, "Ana", Cleaning.Act.CLEANED, "soap")),
                        Optional.empty()))
                .isEqualTo(Standing.State.CLEAN);
    }

    private static List<Problem> problems(BatchState state, BatchEvent event, Standing standing) {
        return BatchRules.problems(
                state,
                event,
                new BenchFacts(
                        List.of(), List.of(), StarterLibrary.load(), LocalDate.of(2026, 11, 25), List.of(standing)));
    }

    private static BatchEvent ready(Optional<String> reason) {
        return new BatchEvent.VesselReady("Kettle", Optional.empty(), Optional.empty(), "washed", List.of(), reason);
    }

    @Test
    void aDirtyVesselNeedsAReasonAndSaysWhatItHeld() {
        BatchState empty = BatchState.of(List.of());
        Standing dirty = Standing.of(KETTLE, List.of(), used(1), NOW);
        assertThat(problems(empty, ready(Optional.empty()), dirty))
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.field()).isEqualTo("asItIs");
                    assertThat(problem.sentence()).contains("it last held Balm, batch B-1");
                });
        assertThat(problems(empty, ready(Optional.of("same balm again")), dirty))
                .isEmpty();
        Standing clear = Standing.of(KETTLE, List.of(sanitised(1)), used(2), NOW);
        assertThat(problems(empty, ready(Optional.empty()), clear)).isEmpty();
    }

    @Test
    void sanitisingThatRanOutSinceAsksAtTheFirstPourOnly() {
        BatchEvent pour = new BatchEvent.Poured(
                "Kettle",
                Optional.empty(),
                "water-purified",
                Optional.empty(),
                Grams.of("10"),
                BatchEvent.Purpose.LINE,
                "scale",
                "",
                "");
        Standing expired = Standing.of(KETTLE, List.of(sanitised(13)), Optional.empty(), NOW);
        LogEntry made = new LogEntry(1, NOW, "Ana", ready(Optional.empty()));
        BatchState ready = BatchState.of(List.of(made));
        assertThat(problems(ready, pour, expired)).extracting(Problem::field).containsExactly("note");
        BatchState begun = BatchState.of(List.of(made, new LogEntry(2, NOW, "Ana", pour)));
        assertThat(problems(begun, pour, expired)).isEmpty();
    }
}
