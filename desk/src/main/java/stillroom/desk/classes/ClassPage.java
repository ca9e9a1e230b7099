package stillroom.desk.classes;

import java.util.List;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/**
 * One class.
 *
 * @param obstacle why it cannot be planned or begun as it stands, empty where it can
 * @param waiting materials whose premix does not stand ready, in one run of words; empty once the class has begun
 * @param token of this showing of the grid, so that what is sent twice is taken once
 */
public record ClassPage(
        Frame frame,
        String path,
        String versionPath,
        String about,
        String facts,
        List<Kit> kit,
        List<Beforehand> beforehand,
        List<String> advice,
        String obstacle,
        String waiting,
        List<Column> columns,
        List<Row> rows,
        String token,
        String by,
        Typed typed) {
    /** One material of the kit list. */
    public record Kit(String name, String each, String all, String onHand, boolean tooLittle) {}

    /** One premix that the teacher makes: {@code lot} once it stands ready. */
    public record Beforehand(String lineId, String name, String says, String lot, boolean possible) {}

    /** One line of the set. */
    public record Column(String lineId, String name, String target) {}

    /** One set. */
    public record Row(int number, long batch, String code, String stage, List<Cell> cells) {}

    /** What was weighed of a line, or the field for it. */
    public record Cell(String field, String weighed, String label) {}

    public boolean begun() {
        return !rows.isEmpty();
    }
}
