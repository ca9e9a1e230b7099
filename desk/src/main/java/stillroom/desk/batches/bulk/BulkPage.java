package stillroom.desk.batches.bulk;

import java.util.List;
import stillroom.desk.batches.BatchHead;
import stillroom.desk.batches.Who;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/**
 * Handing a part of a bulk over to another batch.
 *
 * @param vessels from which it can come, with what is in
 * @param batches into which it can go: a new one, or one in work with a vessel
 * @param code proposed for a new batch
 * @param general what stands in the way and belongs to no field, empty for nothing
 */
public record BulkPage(
        Frame frame,
        BatchHead head,
        List<Choice> vessels,
        List<Choice> batches,
        String code,
        Who who,
        String requestId,
        Typed typed,
        String general) {
    public BulkPage {
        vessels = List.copyOf(vessels);
        batches = List.copyOf(batches);
    }
}
