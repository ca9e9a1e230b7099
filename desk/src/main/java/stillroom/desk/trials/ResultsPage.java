package stillroom.desk.trials;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.formulary.trial.TrialSet;

/**
 * What the trials say about one response, and the best mixture for all.
 *
 * @param mark of what is stored now
 * @param said what is doubtful, or why there is no fit, in sentences
 * @param coefficients estimate, standard error, t, p
 * @param figures value, what it means
 * @param variances squares, degrees, mean square, F, p
 * @param verdicts what they say, in sentences
 * @param runs measured, fitted, residual, studentised residual, leverage, remark
 * @param axes lines to choose from for the ternary picture; none where there are only three
 * @param chosenAxes numbers of the three chosen
 * @param worth where another run is worth most
 */
public record ResultsPage(
        Frame frame,
        TrialSet set,
        String mark,
        TrialSet.Response response,
        Asked asked,
        List<String> said,
        List<Row> coefficients,
        List<Row> figures,
        List<Row> variances,
        List<String> verdicts,
        List<Row> runs,
        Optional<Ternary> ternary,
        List<Choice> axes,
        List<String> chosenAxes,
        List<Trace> traces,
        Optional<Best> best,
        List<String> worth,
        String worthHalfWidth) {

    /**
     * What is looked at, and how.
     *
     * @param model name of the chosen one
     * @param selection name of the chosen one
     */
    public record Asked(List<Choice> responses, String model, String selection) {}

    /**
     * The best mixture.
     *
     * @param reached whether it gives something of all that is wanted
     * @param mixture in words
     * @param desirability with its lower end, in words
     * @param asGood per line: there, and the range of mixtures that may be as good
     * @param responses per response: estimate, interval of the mean, interval of one beaker, unit
     */
    public record Best(
            boolean reached, List<String> mixture, String desirability, List<Row> asGood, List<Row> responses) {}

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
     * @param corners of the top, the right and the left
     * @param held what is held fixed, in words
     * @param estimate the response
     * @param doubt half-width of the 95 % interval of the mean; none where nothing tells it
     * @param best where the picture is cut through
     * @param runs seen from above
     * @param numbers mixture, estimate, half-width
     */
    public record Ternary(
            List<Corner> corners,
            String held,
            Surface estimate,
            Optional<Surface> doubt,
            Mark best,
            List<Mark> runs,
            List<Row> numbers) {
        public String names() {
            return corners.stream().map(Corner::name).collect(Collectors.joining(" / "));
        }
    }

    /**
     * A corner of the triangle.
     *
     * @param shown its name, cut short where it is long
     * @param most percent at the corner
     * @param least percent on the side opposite
     * @param ticks along the side on which its percent is read
     */
    public record Corner(String name, String shown, String most, String least, List<Axes.Tick> ticks) {}

    /**
     * Heights over a triangle.
     *
     * @param bands from lowest to highest
     */
    public record Surface(List<Cell> cells, List<Contour> lines, List<Band> bands) {}

    /** A range of heights in words, with its colour. */
    public record Band(String range, int colour) {}

    /** A line of equal height, with its height and where that stands. */
    public record Contour(String path, String level, String x, String y) {}

    /** All that lies in one band, in its colour, 0..7. */
    public record Cell(String path, int band) {}

    /** A run or the best mixture; what says which. */
    public record Mark(String x, String y, String what) {}

    /**
     * The response while one component or setting changes.
     *
     * @param axes with ticks
     * @param line points of the estimate
     * @param band points around its 95 % interval
     * @param here where the mixture stands that all traces go through, across
     * @param across what is read across, with its unit
     * @param numbers percent or setting, estimate, half-width
     */
    public record Trace(
            String name, Axes axes, String line, String band, String here, String across, List<Row> numbers) {}
}
