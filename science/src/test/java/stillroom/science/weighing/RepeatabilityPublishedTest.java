package stillroom.science.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class RepeatabilityPublishedTest {
    /** NIST Statistical Reference Datasets, univariate summary statistics, NumAcc1: certified s = 1 (from memory). */
    @Test
    void standardDeviationOfTheReferenceDataset() {
        assertThat(Repeatability.standardDeviationGrams(List.of(10000001.0, 10000003.0, 10000002.0)))
                .isCloseTo(1.0, within(1e-9)); // the dataset asks for 9 digits of doubles that are exact here
    }

    /** By hand: nine readings on the step and one a step above, s = d × √(0.1). */
    @Test
    void oneReadingOfTenOffByAStep() {
        List<Double> readings = List.of(50.0, 50.0, 50.0, 50.0, 50.0, 50.0, 50.0, 50.0, 50.0, 50.01);
        assertThat(Repeatability.standardDeviationGrams(readings)).isCloseTo(0.01 * Math.sqrt(0.1), within(1e-12));
    }

    @Test
    void oneReadingTellsNothing() {
        assertThatThrownBy(() -> Repeatability.standardDeviationGrams(List.of(50.0)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
