package stillroom.desk.batches.made;

import java.util.List;
import stillroom.desk.batches.BatchHead;
import stillroom.desk.shell.Frame;

/**
 * What a new version would be, before it is begun.
 *
 * @param basis the version that it is based on, in words
 */
public record CarryPage(Frame frame, BatchHead head, String basis, List<PhaseCarried> phases, String why) {
    public CarryPage {
        phases = List.copyOf(phases);
    }

    public record PhaseCarried(String name, List<LineCarried> lines) {
        public PhaseCarried {
            lines = List.copyOf(lines);
        }
    }

    /** One line as it was and as it would be, both as they are written in a formula. */
    public record LineCarried(String name, String before, String after, boolean changed) {}
}
