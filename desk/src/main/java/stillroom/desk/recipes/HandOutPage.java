package stillroom.desk.recipes;

import java.util.List;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/**
 * Where an author says what a recipe may tell.
 *
 * @param obstacles why there is no recipe yet, one sentence each
 */
public record HandOutPage(
        Frame frame,
        String product,
        int version,
        String path,
        Typed typed,
        List<LineRow> lines,
        List<String> obstacles) {
    /** Steps of balances that readers have [g]. */
    public static final List<String> STEPS = List.of("1", "0.1", "0.01", "0.001");

    /**
     * One line of the formula.
     *
     * @param strength for which the recipe is written, empty where the card states none
     */
    public record LineRow(String id, String name, String percent, String strength) {}
}
