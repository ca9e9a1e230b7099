package stillroom.science.curve;

import java.util.ArrayList;
import java.util.List;

/**
 * How a viscosity was read. Only readings that agree in all of it are compared.
 *
 * @param instrument name or kind
 * @param geometry what turns in it
 * @param spindle its number or size, empty if none
 * @param speed revolutions per minute as typed, empty where the shear rate is the variable
 * @param container beaker or cup
 * @param celsius temperature of the sample [°C]
 * @param sampleAgeHours since it was made [h]
 */
public record Conditions(
        String instrument,
        Geometry geometry,
        String spindle,
        String speed,
        String container,
        double celsius,
        double sampleAgeHours) {
    /** What turns in the instrument. */
    public enum Geometry {
        CONE_AND_PLATE(true),
        PARALLEL_PLATES(true),
        COAXIAL_CYLINDERS(true),
        /** No defined shear rate: apparent viscosity against revolutions per minute. */
        DISC_SPINDLE(false),
        FLOW_CUP(false);

        private final boolean definedShearRate;

        Geometry(boolean definedShearRate) {
            this.definedShearRate = definedShearRate;
        }

        public boolean definedShearRate() {
            return definedShearRate;
        }
    }

    /** In what two readings differ; temperatures within 0.5 °C and ages within a quarter count as the same (common practice, no source). */
    public List<String> differences(Conditions other) {
        List<String> differences = new ArrayList<>();
        add(differences, "instrument", instrument.equalsIgnoreCase(other.instrument));
        add(differences, "geometry", geometry == other.geometry);
        add(differences, "spindle", spindle.equalsIgnoreCase(other.spindle));
        add(differences, "speed", speed.equals(other.speed));
        add(differences, "container", container.equalsIgnoreCase(other.container));
        add(differences, "temperature", Math.abs(celsius - other.celsius) <= 0.5);
        double older = Math.max(sampleAgeHours, other.sampleAgeHours);
        add(differences, "age of the sample", Math.abs(sampleAgeHours - other.sampleAgeHours) <= 0.25 * older);
        return differences;
    }

    private static void add(List<String> differences, String what, boolean same) {
        if (!same) {
            differences.add(what);
        }
    }
}
