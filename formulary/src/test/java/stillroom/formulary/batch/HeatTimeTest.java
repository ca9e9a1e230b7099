package stillroom.formulary.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.material.CardsInstead;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.plan.Workbench;
import stillroom.formulary.quantity.Grams;

/** Minutes above a material's limit add up over reheating, and only while it is in. */
class HeatTimeTest {
    private static final Material TENDER = tender();

    private static Material tender() {
        Material bare = Material.named("active-1", "active", Family.ACTIVE);
        return new Material(
                bare.key(),
                1,
                bare.revisedOn(),
                bare.name(),
                bare.family(),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "",
                Optional.of(40.0),
                List.of(),
                "",
                "",
                Optional.empty(),
                "",
                Optional.empty(),
                java.util.Map.of());
    }

    private static BatchEvent step(String vessel, double celsius, double minutes) {
        return new BatchEvent.StepDone(
                vessel, Optional.empty(), "heat", Optional.of(celsius), Optional.of(minutes), "");
    }

    @Test
    void minutesAboveTheLimitAddUp() {
        LogWriter log = LogWriter.toner()
                .vessel("jug")
                .add(step("beaker", 75, 30))
                .pour("jug", "", "active-1", Grams.of("5"), Purpose.CORRECTION_OTHER)
                .add(step("beaker", 75, 10))
                .add(new BatchEvent.Combined("jug", "beaker", Optional.empty(), Optional.empty()))
                .add(step("beaker", 45, 12))
                .add(step("beaker", 38, 100))
                .add(step("beaker", 60, 8));
        assertThat(HeatTime.of(
                        log.log(),
                        log.state().struck(),
                        new CardsInstead(Workbench.BOOK, java.util.Map.of("active-1", TENDER))))
                .containsExactly(new HeatTime("active-1", 40, 20, 60));
    }
}
