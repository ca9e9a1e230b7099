package stillroom.desk.pictures;

import java.util.List;
import stillroom.desk.batches.BatchHead;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/** The photographs of a batch, oldest first. */
public record PicturesPage(Frame frame, BatchHead head, Typed typed, String requestId, String by, List<Shot> shots) {
    /** When a picture may have been taken; others can be typed. */
    public static final List<String> USUAL_TIMES = List.of("before", "after", "next day");

    /**
     * One photograph.
     *
     * @param struck whether it no longer counts; it stays in the log
     */
    public record Shot(
            int entry,
            String digest,
            String address,
            String when,
            String words,
            String taken,
            String by,
            boolean struck) {}
}
