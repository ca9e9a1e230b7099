package stillroom.desk.trace;

import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/**
 * The trace.
 *
 * @param impact what was found; none while nothing is asked or nothing bears the name
 * @param unknown a word that nothing bears, empty otherwise
 * @param sheet address of the printed sheet
 * @param others other things that bear the same name, with their addresses
 * @param hold the form that stops what is open: what is typed and what is wrong with it
 */
public record TracePage(
        Frame frame,
        Typed typed,
        List<Choice> kinds,
        Optional<Impact> impact,
        String unknown,
        String sheet,
        List<Choice> others,
        Typed hold) {
    public TracePage {
        kinds = List.copyOf(kinds);
        others = List.copyOf(others);
    }
}
