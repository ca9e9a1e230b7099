package stillroom.science.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import stillroom.science.meter.Drift.DayReading;
import stillroom.science.meter.Drift.Verdict;

/** Drift or noise. */
class DriftTest {

    private static List<DayReading> readings(double perDay, double noise, SplittableRandom random) {
        List<DayReading> readings = new ArrayList<>();
        for (int day : List.of(0, 1, 2, 4, 7, 14, 28)) {
            double gaussian =
                    Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
            readings.add(new DayReading(day, 5.5 + perDay * day + noise * gaussian));
        }
        return readings;
    }

    @Test
    void aDriftIsSeenWithItsInterval() {
        SplittableRandom random = new SplittableRandom(3);
        int seen = 0;
        int held = 0;
        for (int i = 0; i < 500; i++) {
            Drift drift = Drift.of(readings(-0.01, 0.02, random), 0.02);
            seen += drift.verdict() == Verdict.DRIFT ? 1 : 0;
            held += drift.lowPerDay() <= -0.01 && -0.01 <= drift.highPerDay() ? 1 : 0;
        }
        assertThat(seen).isGreaterThan(475);
        assertThat(held).isGreaterThan(470); // 95 % of 500, and the wider of two intervals is taken
    }

    @Test
    void noiseIsCalledNoise() {
        SplittableRandom random = new SplittableRandom(4);
        int alarms = 0;
        for (int i = 0; i < 500; i++) {
            alarms += Drift.of(readings(0, 0.02, random), 0.02).verdict() == Verdict.DRIFT ? 1 : 0;
        }
        assertThat(alarms).isLessThan(25); // 5 %
    }

    @Test
    void twoReadingsAreJudgedByTheMeter() {
        assertThat(Drift.of(List.of(new DayReading(0, 5.5), new DayReading(1, 5.45)), 0.02)
                        .verdict())
                .isEqualTo(Verdict.NOISE);
        Drift drift = Drift.of(List.of(new DayReading(0, 5.5), new DayReading(2, 5.3)), 0.02);
        assertThat(drift.verdict()).isEqualTo(Verdict.DRIFT);
        // 1.96 · 0.02 · √2 / 2 days
        assertThat(drift.highPerDay() - drift.perDay()).isCloseTo(0.0277, within(0.0001));
    }

    @Test
    void oneReadingSaysNothing() {
        assertThat(Drift.of(List.of(new DayReading(0, 5.5)), 0.02).verdict()).isEqualTo(Verdict.TOO_FEW_READINGS);
        assertThat(Drift.of(List.of(new DayReading(0, 5.5), new DayReading(0, 5.7)), 0.02)
                        .verdict())
                .isEqualTo(Verdict.TOO_FEW_READINGS);
    }
}
