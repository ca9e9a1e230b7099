package stillroom.formulary.meter;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a reading taken with a meter at a moment is worth.
 *
 * @param says the reason, one sentence; empty for a sound one
 * @param calibration the newest one before that moment
 */
public record MeterStanding(Kind kind, String says, Optional<MeterCalibration> calibration) {
    /** From sound to worthless. */
    public enum Kind {
        SOUND,
        /** Longer ago than it holds. */
        STALE,
        /** Slope, offset, check reading or buffers were not right. */
        FAILED,
        /** Never calibrated, as far as is written down. */
        NONE
    }

    /**
     * The standing of a meter at a moment.
     *
     * @param calibrations of any meters, in any order
     * @param zone in which a day begins and ends
     */
    public static MeterStanding of(PhMeter meter, List<MeterCalibration> calibrations, Instant moment, ZoneId zone) {
        Optional<MeterCalibration> newest = calibrations.stream()
                .filter(one -> one.meter().equalsIgnoreCase(meter.name()))
                .filter(one -> !one.at().isAfter(moment))
                .max(Comparator.comparing(MeterCalibration::at));
        if (newest.isEmpty()) {
            return new MeterStanding(
                    Kind.NONE, "no calibration of " + meter.name() + " is written down before it", newest);
        }
        List<String> faults = newest.get().faults(newest.get().at().atZone(zone).toLocalDate());
        if (!faults.isEmpty()) {
            return new MeterStanding(Kind.FAILED, "the calibration before it failed: " + faults.get(0), newest);
        }
        return isStale(meter, newest.get(), moment, zone)
                ? new MeterStanding(Kind.STALE, "the calibration before it was " + age(newest.get(), moment), newest)
                : new MeterStanding(Kind.SOUND, "", newest);
    }

    private static boolean isStale(PhMeter meter, MeterCalibration newest, Instant moment, ZoneId zone) {
        return meter.holdsHours()
                .map(hours -> newest.at().plus(Duration.ofHours(hours)).isBefore(moment))
                .orElseGet(() -> !newest.at()
                        .atZone(zone)
                        .toLocalDate()
                        .equals(moment.atZone(zone).toLocalDate()));
    }

    private static String age(MeterCalibration newest, Instant moment) {
        double hours = Duration.between(newest.at(), moment).toMinutes() / 60.0;
        return hours < 48
                ? String.format(Locale.ROOT, "%.0f h old", hours)
                : String.format(Locale.ROOT, "%.0f days old", hours / 24);
    }

    public boolean isSound() {
        return kind == Kind.SOUND;
    }
}
