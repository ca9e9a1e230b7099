package stillroom.desk.materials;

import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;

/**
 * The list of materials as it is shown.
 *
 * @param query what was looked for
 * @param found how many cards fit; the list holds the first of them
 * @param total how many cards there are in all
 */
public record ShelfPage(
        Frame frame,
        ShelfQuery query,
        List<Choice> families,
        List<Choice> kinds,
        List<Row> rows,
        int found,
        int total) {
    public boolean isCut() {
        return found > rows.size();
    }

    /**
     * One material.
     *
     * @param origin "own card" or "starter library", in words
     * @param onHand amount with unit, empty where no lot stands on the shelf
     * @param lots what is to be said about its lots, may be empty
     */
    public record Row(
            String key,
            String name,
            String inci,
            String family,
            String functions,
            String origin,
            String onHand,
            String lots) {}
}
