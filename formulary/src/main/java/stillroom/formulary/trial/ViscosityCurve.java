package stillroom.formulary.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.science.curve.Conditions;

/**
 * Readings of viscosity on one product, kept with it.
 *
 * @param key name of the document
 * @param product on which they were taken
 * @param against what the viscosity is read against
 * @param name as the maker calls it
 * @param brought electrolyte that other materials bring; 0 for a flow curve [mass percent]
 * @param wanted viscosity, where one is
 * @param series in the order in which they were entered
 */
public record ViscosityCurve(
        String key,
        long product,
        Against against,
        String name,
        double brought,
        Optional<Double> wanted,
        List<Series> series) {
    /** Name of the drawer in which curves are kept. */
    public static final String DRAWER = "viscosity-curve";

    public ViscosityCurve {
        series = List.copyOf(series);
    }

    /** What changes from reading to reading. */
    public enum Against {
        /** Dose of salt or thickener added [mass percent]. */
        DOSE,
        /** Shear rate [1/s]. */
        SHEAR_RATE
    }

    /** Readings taken in one way. */
    public record Series(Conditions conditions, List<Reading> readings) {
        public Series {
            readings = List.copyOf(readings);
        }
    }

    /**
     * @param at dose [mass percent] or shear rate [1/s]
     * @param viscosity in the unit of the curve
     */
    public record Reading(double at, double viscosity) {}

    /** Series that were read in the same way as one of them, that one included. */
    public List<Series> comparableWith(int number) {
        Conditions wanted = series.get(number).conditions();
        return series.stream()
                .filter(one -> wanted.differences(one.conditions()).isEmpty())
                .toList();
    }

    public ViscosityCurve with(Series more) {
        List<Series> all = new ArrayList<>(series);
        all.add(more);
        return withSeries(all);
    }

    public ViscosityCurve without(int number) {
        List<Series> all = new ArrayList<>(series);
        all.remove(number);
        return withSeries(all);
    }

    private ViscosityCurve withSeries(List<Series> all) {
        return new ViscosityCurve(key, product, against, name, brought, wanted, all);
    }
}
