package stillroom.formulary.meter;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillroom.formulary.meter.MeterStanding.Kind;

class MeterStandingTest {
    private static final Instant MORNING = Instant.parse("2026-11-25T08:00:00Z");
    private static final PhMeter METER = new PhMeter("electrode 1", 0.02, Optional.empty());

    private static MeterBuffer buffer(double pH) {
        return new MeterBuffer("buffer " + pH, "L1", Optional.of(LocalDate.of(2027, 1, 1)), pH);
    }

    private static MeterCalibration calibrated(Optional<Double> slope, Optional<Double> check) {
        return new MeterCalibration(
                "electrode 1",
                MORNING,
                "maker",
                20,
                buffer(4.0),
                buffer(7.02),
                slope,
                slope.map(any -> 5.0),
                check.map(any -> buffer(10.06)),
                check,
                "");
    }

    private static MeterStanding at(PhMeter meter, MeterCalibration calibration, Duration later) {
        return MeterStanding.of(meter, List.of(calibration), MORNING.plus(later), ZoneOffset.UTC);
    }

    /** Slope 95 to 105 %, third buffer within 0.05: common practice, no source. */
    @Test
    void slopeOrThirdBufferShowsThatItIsRight() {
        assertThat(at(METER, calibrated(Optional.of(97.0), Optional.empty()), Duration.ofHours(2))
                        .kind())
                .isEqualTo(Kind.SOUND);
        assertThat(at(METER, calibrated(Optional.empty(), Optional.of(10.02)), Duration.ofHours(2))
                        .kind())
                .isEqualTo(Kind.SOUND);
        assertThat(at(METER, calibrated(Optional.of(93.0), Optional.empty()), Duration.ofHours(2))
                        .says())
                .contains("93.0 %");
        assertThat(at(METER, calibrated(Optional.empty(), Optional.of(9.98)), Duration.ofHours(2))
                        .kind())
                .isEqualTo(Kind.FAILED);
        assertThat(at(METER, calibrated(Optional.empty(), Optional.empty()), Duration.ofHours(2))
                        .kind())
                .isEqualTo(Kind.FAILED);
    }

    @Test
    void itHoldsForTheDayOrForAsLongAsTheMakerSays() {
        MeterCalibration sound = calibrated(Optional.of(98.0), Optional.empty());
        assertThat(at(METER, sound, Duration.ofHours(15)).kind()).isEqualTo(Kind.SOUND);
        assertThat(at(METER, sound, Duration.ofHours(17)).kind()).isEqualTo(Kind.STALE);
        PhMeter fourHours = new PhMeter("electrode 1", 0.02, Optional.of(4));
        assertThat(at(fourHours, sound, Duration.ofHours(5)).says()).contains("5 h old");
        assertThat(at(METER, sound, Duration.ofHours(-1)).kind()).isEqualTo(Kind.NONE);
    }

    @Test
    void aBufferPastItsDateAndTwoEqualBuffersFail() {
        MeterBuffer old = new MeterBuffer("buffer 7", "L2", Optional.of(LocalDate.of(2026, 11, 24)), 7.02);
        MeterCalibration one = new MeterCalibration(
                "electrode 1",
                MORNING,
                "",
                20,
                buffer(4),
                old,
                Optional.of(98.0),
                Optional.of(0.0),
                Optional.empty(),
                Optional.empty(),
                "");
        assertThat(one.faults(LocalDate.of(2026, 11, 25))).anyMatch(fault -> fault.contains("past its date"));
        MeterCalibration same = new MeterCalibration(
                "electrode 1",
                MORNING,
                "",
                20,
                buffer(7),
                buffer(7),
                Optional.of(98.0),
                Optional.of(0.0),
                Optional.empty(),
                Optional.empty(),
                "");
        assertThat(same.faults(LocalDate.of(2026, 11, 25))).anyMatch(fault -> fault.contains("two different ones"));
        assertThat(one.brackets(5.1)).isTrue();
        assertThat(one.brackets(7.5)).isFalse();
    }

    @Test
    void readingsAreMarkedByTheMeterThatTheyName() {
        MeterMarks marks = new MeterMarks(
                List.of(METER), List.of(calibrated(Optional.of(90.0), Optional.empty())), ZoneOffset.UTC);
        Instant later = MORNING.plusSeconds(600);
        assertThat(marks.of(Map.of("electrode", "Electrode 1"), later)).contains("failed");
        assertThat(marks.of(Map.of(), later)).contains("failed");
        assertThat(marks.of(Map.of("electrode", "strip"), later)).isEmpty();
        assertThat(marks.of(Map.of("electrode", "borrowed"), later)).isEmpty();
        assertThat(new MeterMarks(List.of(), List.of(), ZoneOffset.UTC).of(Map.of(), later))
                .isEmpty();
    }
}
