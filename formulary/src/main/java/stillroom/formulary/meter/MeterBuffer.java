package stillroom.formulary.meter;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stillroom.science.meter.BufferTable;

/**
 * A calibration buffer as it was used.
 *
 * @param name such as "buffer 4.01"
 * @param lot of the bottle, may be empty
 * @param expires printed on the bottle
 * @param pH its true pH at the temperature of the calibration, by the table on the bottle or a published one
 */
public record MeterBuffer(String name, String lot, Optional<LocalDate> expires, double pH) {
    public MeterBuffer {
        if (!(pH >= 0 && pH <= 14)) {
            throw new IllegalArgumentException("pH of buffer " + name + " is " + pH + ", allowed: 0 to 14");
        }
    }

    BufferTable at(double celsius) {
        return new BufferTable(name, "as entered", List.of(celsius), List.of(pH));
    }
}
