package stillroom.formulary.meter;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Marks readings of a pH by what the meter was worth at that moment.
 *
 * @param meters of the workshop
 * @param calibrations of all of them
 */
public record MeterMarks(List<PhMeter> meters, List<MeterCalibration> calibrations, ZoneId zone) {
    public MeterMarks {
        meters = List.copyOf(meters);
        calibrations = List.copyOf(calibrations);
    }

    /** Why a reading is not to be relied on; empty when it is, when strips were used, or where no meter is on record. */
    public String of(Map<String, String> how, Instant at) {
        boolean strips = how.values().stream()
                .anyMatch(said -> said.toLowerCase(Locale.ROOT).contains("strip"));
        return strips
                ? ""
                : meter(how.getOrDefault("electrode", ""))
                        .map(meter ->
                                MeterStanding.of(meter, calibrations, at, zone).says())
                        .orElse("");
    }

    /** The meter that is meant: the one of this name, or the only one where no name was written. */
    public Optional<PhMeter> meter(String name) {
        if (name.isBlank() && meters.size() == 1) {
            return Optional.of(meters.get(0));
        }
        return meters.stream()
                .filter(meter -> meter.name().equalsIgnoreCase(name.strip()))
                .findFirst();
    }

    /** Repeatability of the meter that is meant; the usual one where it is not on record [pH]. */
    public double repeatability(String name) {
        return meter(name).map(PhMeter::repeatability).orElse(PhMeter.USUAL_REPEATABILITY);
    }
}
