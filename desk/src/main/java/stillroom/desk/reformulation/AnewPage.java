package stillroom.desk.reformulation;

import java.util.List;
import java.util.Optional;
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
 * @param wish what was asked, in words
 * @param searching it is not over; the page looks again by itself
 * @param also lines that may be among several that are gone
 * @param measures of which two make a curve
 * @param constituents each of which may have a band of its own
 * @param own figures with a band of their own, by field
 * @param allowed materials that may be dosed otherwise than their cards and the shelf say, by key
 * @param nothingExpires what expires soon was to be used up, and there is none
 * @param buys materials of the library any one of which would do, the best first
 * @param bestBought the formula with the first of them
 * @param nearest that might do and were not judged
 * @param asIfBought materials that count as on the shelf
 * @param refusals better blends that the evaluation refused
 * @param more blends within the bands that were not looked at
 * @param refused why it cannot be answered, empty where it can
 */
public record AnewPage(
        Frame frame,
        Product product,
        FormulaVersion version,
        String path,
        String query,
        String wish,
        Typed typed,
        String currency,
        List<Choice> lines,
        List<Also> also,
        List<Choice> shelf,
        List<Choice> aims,
        List<Choice> measures,
        List<Choice> constituents,
        List<Choice> own,
        List<Choice> allowed,
        boolean noHarsher,
        boolean nothingExpires,
        boolean asked,
        boolean searching,
        long nodes,
        String refused,
        List<String> conflict,
        List<Way> reliefs,
        List<Buy> buys,
        Optional<Card> bestBought,
        List<String> nearest,
        List<Choice> asIfBought,
        List<String> refusals,
        boolean more,
        boolean stopped,
        List<Card> cards,
        Curve curve) {

    /** A line that may be gone besides the one that was chosen first. */
    public record Also(String key, String name, boolean gone) {}

    /** What would make it possible, and the address that asks for that. */
    public record Way(String words, String address) {}

    /** @param address that asks the same with it bought */
    public record Buy(String name, String percent, boolean priced, String ingredients, String address) {}

    /**
     * One answer.
     *
     * @param take address at which it is taken
     * @param behind what the evaluation finds, for which it stands behind the others
     * @param enoughFor grams of product for which the shelf suffices, empty where that is no question
     * @param nature where natural origin was asked for
     */
    public record Card(
            int number,
            String title,
            String take,
            String cost,
            String harshness,
            boolean proven,
            List<String> passedOver,
            List<Row> changes,
            List<Compared> figures,
            List<String> givesUp,
            List<String> behind,
            String enoughFor,
            List<Finding> arisen,
            List<String> prices,
            Optional<Nature> nature) {}

    /**
     * Natural origin of an answer, in percent.
     *
     * @param atMost empty where every index is known
     * @param missing cards without an index, that which matters most first
     * @param more cards without an index that are not named
     */
    public record Nature(String was, String guaranteed, String atMost, List<Missing> missing, int more) {}

    /** @param percent of the answer */
    public record Missing(String key, String name, String percent) {}

    /**
     * A material's change, as figure and as bar: both in percent of the formula, the bar from the middle.
     *
     * @param from, width of the bar, of 100
     */
    public record Row(String name, String before, String after, String by, String from, String width, boolean less) {}

    /** A figure before and after. */
    public record Compared(String name, String before, String after) {}

    /**
     * One goal against another; without points there is none.
     *
     * @param low, high ends of what is drawn to the right
     */
    public record Curve(
            String title, String upwards, String right, List<Point> points, String line, String low, String high) {
        static final Curve NONE = new Curve("", "", "", List.of(), "", "", "");
    }

    /** @param x, y places in a picture of 700 by 300 */
    public record Point(String first, String second, String x, String y, String with, boolean proven) {}
}
