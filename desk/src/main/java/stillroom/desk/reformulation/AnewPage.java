package stillroom.desk.reformulation;

import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;

/**
 * All that the page of a formula made anew may see.
 *
 * @param query the wish as it stands in the address
 * @param searching it is not over; the page looks again by itself
 * @param refused why it cannot be answered, empty where it can
 */
public record AnewPage(
        Frame frame,
        Product product,
        FormulaVersion version,
        String path,
        String query,
        Typed typed,
        List<Choice> lines,
        List<Choice> shelf,
        List<Choice> aims,
        boolean asked,
        boolean searching,
        long nodes,
        String refused,
        List<String> conflict,
        List<String> reliefs,
        boolean stopped,
        List<Card> cards,
        Curve curve) {

    /** One answer. */
    public record Card(
            int number,
            String title,
            String cost,
            boolean proven,
            List<Row> changes,
            List<Compared> figures,
            List<String> givesUp,
            List<Finding> arisen,
            List<String> prices) {}

    /**
     * A material's change, as figure and as bar: both in percent of the formula, the bar from the middle.
     *
     * @param from, width of the bar, of 100
     */
    public record Row(String name, String before, String after, String by, String from, String width, boolean less) {}

    /** A figure before and after. */
    public record Compared(String name, String before, String after) {}

    /** Cost against change; without points there is none. */
    public record Curve(List<Point> points, String line) {}

    /** @param x, y places in a picture of 640 by 300 */
    public record Point(String cost, String change, String x, String y, String with) {}
}
