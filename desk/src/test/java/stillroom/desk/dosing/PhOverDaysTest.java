package stillroom.desk.dosing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.meter.PhMeter;

/** Readings over the days on the batch's own page. */
class PhOverDaysTest {
    @TempDir
    Path folder;

    @Test
    void aDriftIsToldWithItsIntervalAndTheCandidatesThatArePresent() {
        try (TonerBench bench = TonerBench.in(folder)) {
            bench.append(TonerBench.pour("lactic-acid-80", "20", Purpose.CORRECTION_ACID));
            for (int day = 0; day < 6; day++) {
                bench.appendAfterDays(day, TonerBench.reading(5.0 - 0.04 * day));
            }
            String page = bench.desk().get(bench.path()).body();
            assertThat(page).contains("Falls by 0.04 pH a day").contains("That is a drift");
            assertThat(page).contains("lactic acid: The oligomers");
            assertThat(page).doesNotContain("urea:");
        }
    }

    @Test
    void twoReadingsAMinuteApartAreNoDriftAndReadingsBeforeACorrectionBelongToNoTrend() {
        try (TonerBench bench = TonerBench.in(folder)) {
            bench.append(TonerBench.reading(5.6));
            bench.append(TonerBench.pour("lactic-acid-80", "5", Purpose.CORRECTION_ACID));
            bench.append(TonerBench.reading(5.0));
            assertThat(bench.desk().get(bench.path()).body()).doesNotContain("class=\"trend\"");
            bench.appendAfter(Duration.ofMinutes(1), TonerBench.reading(5.07));
            assertThat(bench.desk().get(bench.path()).body())
                    .contains("Too early to tell", "2 readings over 1 minute", "from 26 Nov 2026, 05:30 on")
                    .doesNotContain("a drift", "pH a day");
        }
    }

    @Test
    void aSlowDriftIsSaidByTheWeek() {
        try (TonerBench bench = TonerBench.in(folder)) {
            for (int week = 0; week < 5; week++) {
                bench.appendAfterDays(7 * week, TonerBench.reading(5.0 + 0.07 * week));
            }
            assertThat(bench.desk().get(bench.path()).body())
                    .contains("Climbs by 0.07 pH a week", "5 readings over 28.0 days", "That is a drift");
        }
    }

    @Test
    void noiseIsCalledNoise() {
        try (TonerBench bench = TonerBench.in(folder)) {
            for (int day = 0; day < 4; day++) {
                bench.appendAfterDays(day, TonerBench.reading(day % 2 == 0 ? 5.00 : 5.01));
            }
            assertThat(bench.desk().get(bench.path()).body()).contains("That is noise");
        }
    }

    @Test
    void aReadingWithoutACalibrationIsMarkedOnceAMeterIsOnRecord() {
        try (TonerBench bench = TonerBench.in(folder)) {
            bench.append(TonerBench.reading(5.0));
            assertThat(bench.desk().get(bench.path()).body()).doesNotContain("Marked:");
            bench.desk().ledger().meters().write(new PhMeter("electrode 1", 0.02, Optional.empty()));
            assertThat(bench.desk().get(bench.path()).body())
                    .contains("Marked:")
                    .contains("no calibration of electrode 1");
            assertThat(bench.page("electrode=electrode%201").body()).contains("Calibrate before reading");
        }
    }
}
