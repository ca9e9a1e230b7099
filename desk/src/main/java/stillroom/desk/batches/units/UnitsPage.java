package stillroom.desk.batches.units;

import java.util.List;
import stillroom.desk.batches.BatchHead;
import stillroom.desk.batches.Who;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/**
 * What concerns a batch as a whole.
 *
 * @param requestId names the next act
 * @param released, open whether it may be recalled; whether it may be scrapped
 * @param today as a date field takes it
 * @param general problems that belong to no field
 */
public record UnitsPage(
        Frame frame,
        BatchHead head,
        Typed typed,
        List<Stop> stops,
        List<Choice> stopKinds,
        Standing standing,
        List<Holder> holders,
        List<Choice> moveKinds,
        List<Line> moves,
        List<Line> samples,
        List<Line> complaints,
        List<Line> reactions,
        List<Document> documents,
        List<Overrun> overruns,
        boolean released,
        boolean open,
        String requestId,
        Who who,
        String today,
        List<String> general) {
    public UnitsPage {
        stops = List.copyOf(stops);
        stopKinds = List.copyOf(stopKinds);
        holders = List.copyOf(holders);
        moveKinds = List.copyOf(moveKinds);
        moves = List.copyOf(moves);
        samples = List.copyOf(samples);
        complaints = List.copyOf(complaints);
        reactions = List.copyOf(reactions);
        documents = List.copyOf(documents);
        overruns = List.copyOf(overruns);
        general = List.copyOf(general);
    }

    /** Something that stops the batch now. */
    public record Stop(int entry, String says, String when, boolean awaits) {}

    /** Where the units are. */
    public record Standing(
            String filled,
            String out,
            String returned,
            String withdrawn,
            String onShelf,
            String how,
            String reconciled) {}

    /** Who has units. */
    public record Holder(String name, String units) {}

    /** One entry of the log as a line of a list. */
    public record Line(int entry, String says, String when) {}

    /** Something stood too long; {@code reason} is empty until it is given. */
    public record Overrun(String name, String says, String reason) {}

    /** A document of the batch. */
    public record Document(String name, String address, String says) {}
}
