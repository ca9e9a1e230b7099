package stillroom.desk.papers;

import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;
import stillroom.formulary.material.Paper;

/**
 * The documents on one thing.
 *
 * @param back address of the thing
 * @param path address of this page
 */
public record PapersPage(Frame frame, String about, String back, String path, List<Row> rows, Typed typed) {
    public PapersPage {
        rows = List.copyOf(rows);
    }

    /**
     * One document.
     *
     * @param due whether it is to be looked at again now
     * @param file address of the kept file, empty where none is kept
     */
    public record Row(
            int number,
            String kind,
            String title,
            String dated,
            String reviewBy,
            boolean due,
            String file,
            String fileName,
            String note) {}

    public List<Choice> kinds() {
        return Choice.of(Paper.Kind.class, Paper.Kind::words);
    }
}
