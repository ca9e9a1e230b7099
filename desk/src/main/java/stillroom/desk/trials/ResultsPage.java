package stillroom.desk.trials;

import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.formulary.trial.TrialSet;

/**
 * What the trials say about one response, and the best mixture for all.
 *
 * @param said what is doubtful, or why there is no fit, in sentences
 * @param coefficients estimate, standard error, t, p
 * @param variances squares, degrees, mean square, F, p
 * @param runs measured, fitted, residual, studentised residual, leverage
 * @param axes lines to choose from for the ternary picture; none where there are only three
 * @param chosenAxes numbers of the three chosen
 * @param optimum per response: estimate, interval of the mean, interval of one batch, unit
 * @param best the mixture, in words
 * @param worth where another run is worth most
 */
public record ResultsPage(
        Frame frame,
        TrialSet set,
        TrialSet.Response response,
        List<Choice> responses,
        String model,
        String selection,
        List<String> said,
        List<Row> coefficients,
        List<Row> figures,
        List<Row> variances,
        List<Row> runs,
        Optional<Ternary> ternary,
        List<Choice> axes,
        List<String> chosenAxes,
        List<Trace> traces,
        List<Row> optimum,
        List<String> best,
        String desirability,
        List<String> worth,
        String worthHalfWidth) {

    /** A row of a table: its head, then its cells. */
    public record Row(String name, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    public List<Choice> models() {
        return Words.MODELS;
    }

    public List<Choice> selections() {
        return Words.SELECTIONS;
    }

    /**
     * A response over three components.
     *
     * @param corners names and percentages at the three corners
     * @param held what is held fixed, in words
     * @param estimate the response
     * @param doubt half-width of the 95 % interval of the mean; none where nothing tells it
     * @param best where the picture is cut through
     * @param runs seen from above
     * @param numbers mixture, estimate, half-width
     */
    public record Ternary(
            List<String> corners,
            String held,
            Surface estimate,
            Optional<Surface> doubt,
            Mark best,
            List<Mark> runs,
            List<Row> numbers) {}

    /**
     * Heights over a triangle.
     *
     * @param bands from lowest to highest: range in words
     */
    public record Surface(List<Cell> cells, List<Contour> lines, List<String> bands) {}

    /** A line of equal height, with its height and where that stands. */
    public record Contour(String path, String level, String x, String y) {}

    /** All that lies in one band, 0..7. */
    public record Cell(String path, int band) {}

    /** A run or the best mixture; what says which. */
    public record Mark(String x, String y, String what) {}

    /**
     * The response while one component changes against all others.
     *
     * @param line points of the estimate
     * @param band points around its 95 % interval
     * @param numbers percent, estimate, half-width
     */
    public record Trace(
            String name,
            String line,
            String band,
            String left,
            String right,
            String low,
            String high,
            List<Row> numbers) {}
}
