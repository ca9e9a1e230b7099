package stillroom.desk.files;

import java.util.List;
import stillroom.desk.shell.Frame;

/**
 * A formula file that is being looked at; nothing of it is stored yet.
 *
 * @param problem why it cannot be read, one sentence each; empty before one was chosen
 * @param text the file, to be sent again with the yes; empty where there is none to store
 */
public record FormulaFilePage(
        Frame frame, List<String> problem, List<String> remarks, String name, List<Line> lines, String text) {
    /** One line as it was understood. */
    public record Line(String phase, String material, String amount) {}
}
