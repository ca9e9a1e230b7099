package stillroom.desk.batches.fill;

import java.util.List;
import stillroom.desk.batches.BatchHead;
import stillroom.desk.batches.Who;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/**
 * Filling and deciding.
 *
 * @param vessels from which may be filled, with what is in them
 * @param fills what was filled so far, one sentence each
 * @param decided what was decided, empty while nothing was
 * @param requestId names the next act
 * @param general problems that belong to no field
 */
public record FillPage(
        Frame frame,
        BatchHead head,
        Typed typed,
        List<Choice> vessels,
        String pack,
        List<String> fills,
        Yielded yielded,
        List<Gate> gates,
        String decided,
        int decidedEntry,
        String requestId,
        Who who,
        List<String> general) {
    public FillPage {
        vessels = List.copyOf(vessels);
        fills = List.copyOf(fills);
        gates = List.copyOf(gates);
        general = List.copyOf(general);
    }

    /** Yield and loss, all as shown. */
    public record Yielded(
            String added,
            String evaporated,
            String filled,
            String filledPercent,
            String retained,
            String samples,
            String handedOver,
            String unaccounted,
            String lossPercent) {}

    /** One thing that stands before the release. */
    public record Gate(String name, String title, boolean met, String says) {
        public String field() {
            return "overrule-" + name;
        }
    }

    public boolean open() {
        return gates.stream().anyMatch(gate -> !gate.met());
    }
}
