package stillroom.science.meter;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The true pH of a calibration buffer at its temperature; the maker may enter the table from the bottle.
 *
 * @param name of the buffer
 * @param source of the table
 * @param celsius rising temperatures [°C]
 * @param pH at each of them
 */
public record BufferTable(String name, String source, List<Double> celsius, List<Double> pH) {

    public BufferTable {
        celsius = List.copyOf(celsius);
        pH = List.copyOf(pH);
        if (celsius.size() != pH.size() || celsius.isEmpty()) {
            throw new IllegalArgumentException(
                    name + " has " + celsius.size() + " temperatures and " + pH.size() + " pH values: one each");
        }
        for (int i = 1; i < celsius.size(); i++) {
            if (!(celsius.get(i) > celsius.get(i - 1))) {
                throw new IllegalArgumentException(
                        name + ": temperatures must rise, " + celsius.get(i) + " °C does not");
            }
        }
    }

    /** pH at a temperature, straight between two rows; empty outside the table. */
    public OptionalDouble pHAt(double temperatureCelsius) {
        for (int i = 0; i < celsius.size(); i++) {
            if (celsius.get(i) == temperatureCelsius) {
                return OptionalDouble.of(pH.get(i));
            }
            if (i > 0 && temperatureCelsius > celsius.get(i - 1) && temperatureCelsius < celsius.get(i)) {
                double share = (temperatureCelsius - celsius.get(i - 1)) / (celsius.get(i) - celsius.get(i - 1));
                return OptionalDouble.of(pH.get(i - 1) + share * (pH.get(i) - pH.get(i - 1)));
            }
        }
        return OptionalDouble.empty();
    }
}
