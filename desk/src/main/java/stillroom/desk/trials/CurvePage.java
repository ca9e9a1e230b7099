package stillroom.desk.trials;

import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;
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
     * @param rows figures found
     * @param picture none before there is a fit
     */
    public record Shown(List<String> said, List<ResultsPage.Row> rows, Optional<Picture> picture) {
        static final Shown NOTHING = new Shown(List.of(), List.of(), Optional.empty());

        public Shown {
            said = List.copyOf(said);
            rows = List.copyOf(rows);
        }
    }

    /**
     * @param line of the fitted curve
     * @param marks readings as x, y
     * @param stop where advice ends, as x; empty for none
     * @param numbers of the curve: dose or shear rate, fitted
     */
    public record Picture(
            String line,
            List<ResultsPage.Mark> marks,
            String stop,
            String left,
            String right,
            String low,
            String high,
            List<ResultsPage.Row> numbers) {}

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
