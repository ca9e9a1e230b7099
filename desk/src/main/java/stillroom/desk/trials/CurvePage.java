package stillroom.desk.trials;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;
import stillroom.formulary.trial.ViscosityCurve;
import stillroom.science.curve.Conditions.Geometry;

/**
 * A look at a curve of viscosity that is not kept yet.
 *
 * @param products with which it can be kept
 */
public record CurvePage(Frame frame, Typed typed, List<Choice> products, Shown shown) {
    public CurvePage {
        products = List.copyOf(products);
    }

    /**
     * What came of the readings.
     *
     * @param said in sentences
     * @param heads of the figures
     * @param rows figures found
     * @param picture none before there is a fit
     */
    public record Shown(List<String> said, List<String> heads, List<ResultsPage.Row> rows, Optional<Picture> picture) {
        static final Shown NOTHING = new Shown(List.of(), List.of(), List.of(), Optional.empty());

        public Shown {
            said = List.copyOf(said);
            rows = List.copyOf(rows);
        }
    }

    /**
     * @param axes with ticks
     * @param lines fitted, the preferred one first
     * @param marks readings
     * @param flags places of which something is said, such as the peak
     * @param numbers of the curve: dose or shear rate, fitted
     */
    public record Picture(
            Axes axes,
            List<Line> lines,
            List<ResultsPage.Mark> marks,
            List<Flag> flags,
            List<ResultsPage.Row> numbers) {}

    /** A fitted curve; words say which. */
    public record Line(String points, String words) {}

    /**
     * A place across that is marked by an upright line.
     *
     * @param from left end of its interval; the same as x where there is none
     * @param to right end of its interval
     */
    public record Flag(String x, String from, String to, String style, String words) {
        public String width() {
            return String.format(Locale.ROOT, "%.1f", Double.parseDouble(to) - Double.parseDouble(from));
        }
    }

    public boolean isFlowCup() {
        return typed.value("geometry").equals(Geometry.FLOW_CUP.name());
    }

    /** What kind of curve it is, in words. */
    static String kind(ViscosityCurve.Against against) {
        return switch (against) {
            case DOSE -> "viscosity against salt or thickener";
            case SHEAR_RATE -> "viscosity against the shear rate";
        };
    }

    static List<Choice> geometryChoices() {
        return Choice.of(Geometry.class, CurvePage::words);
    }

    public List<Choice> geometries() {
        return geometryChoices();
    }

    static String words(Geometry geometry) {
        return switch (geometry) {
            case CONE_AND_PLATE -> "cone and plate";
            case PARALLEL_PLATES -> "parallel plates";
            case COAXIAL_CYLINDERS -> "coaxial cylinders";
            case DISC_SPINDLE -> "disc spindle";
            case FLOW_CUP -> "flow cup";
        };
    }
}
