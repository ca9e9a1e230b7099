package stillroom.desk.workshop.vessels;

import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/**
 * The list of vessels and tools.
 *
 * @param fresh the form for a new one
 * @param limits the form of the hold times
 */
public record VesselsPage(Frame frame, List<Row> rows, Typed fresh, Typed limits) {
    public VesselsPage {
        rows = List.copyOf(rows);
    }

    /** One vessel or tool. */
    public record Row(String name, String path, String what, String state, boolean sanitised, String says) {}

    /** One vessel or tool with what was done to it. */
    public record One(
            Frame frame,
            String name,
            String path,
            String what,
            String says,
            Typed typed,
            List<Choice> acts,
            List<Done> history) {
        public One {
            acts = List.copyOf(acts);
            history = List.copyOf(history);
        }
    }

    /** Something that was done. */
    public record Done(String when, String what, String by) {}
}
