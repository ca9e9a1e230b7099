package stillroom.formulary.meter;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.science.meter.Calibration;
import stillroom.science.meter.Calibration.Check;
import stillroom.science.meter.Calibration.Slope;

/**
 * One setting of a meter with two buffers, and what shows that it was right.
 *
 * @param meter name of the meter
 * @param celsius temperature of the buffers [°C]
 * @param slopePercent of the Nernst slope, as the meter says it [%]
 * @param offsetMillivolt at pH 7, as the meter says it [mV]
 * @param checkBuffer a third buffer that was only read
 * @param checkRead what the meter showed in it
 */
public record MeterCalibration(
        String meter,
        Instant at,
        String by,
        double celsius,
        MeterBuffer low,
        MeterBuffer high,
        Optional<Double> slopePercent,
        Optional<Double> offsetMillivolt,
        Optional<MeterBuffer> checkBuffer,
        Optional<Double> checkRead,
        String note) {

    /** Why it does not hold, one sentence each; empty when it does. */
    public List<String> faults(LocalDate day) {
        List<String> faults = new ArrayList<>();
        if (!(low.pH() < high.pH())) {
            faults.add("both buffers have pH " + low.pH() + ": two different ones are needed");
        }
        faults.addAll(judged().faults());
        for (MeterBuffer buffer : buffers()) {
            buffer.expires()
                    .filter(day::isAfter)
                    .ifPresent(expiry -> faults.add(buffer.name() + " was past its date of " + expiry));
        }
        return List.copyOf(faults);
    }

    /** Whether a pH lies between the two buffers. */
    public boolean brackets(double pH) {
        return judged().brackets(pH);
    }

    private List<MeterBuffer> buffers() {
        List<MeterBuffer> buffers = new ArrayList<>(List.of(low, high));
        checkBuffer.ifPresent(buffers::add);
        return buffers;
    }

    private Calibration judged() {
        Optional<Slope> slope = slopePercent.map(percent -> new Slope(percent, offsetMillivolt.orElse(0.0)));
        Optional<Check> check =
                checkBuffer.flatMap(buffer -> checkRead.map(read -> new Check(buffer.at(celsius), celsius, read)));
        return new Calibration(low.at(celsius), high.at(celsius), celsius, slope, check);
    }
}
