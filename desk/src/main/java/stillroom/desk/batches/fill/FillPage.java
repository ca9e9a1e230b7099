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
 * @param fills what was filled so far
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
        List<Choice> packLots,
        List<String> compatibility,
        String nominal,
        String tare,
        List<Check> checks,
        List<Fill> fills,
        Yielded yielded,
        List<Gate> gates,
        String decided,
        int decidedEntry,
        String requestId,
        Who who,
        List<String> general) {
    public FillPage {
        vessels = List.copyOf(vessels);
        packLots = List.copyOf(packLots);
        compatibility = List.copyOf(compatibility);
        checks = List.copyOf(checks);
        fills = List.copyOf(fills);
        gates = List.copyOf(gates);
        general = List.copyOf(general);
    }

    /**
     * One filling.
     *
     * @param each mean of its containers [g]
     * @param content how that stands to the declared content; empty where none is declared
     * @param off whether that is to be looked at
     */
    public record Fill(String says, String each, String content, boolean off) {}

    /** One fill check, container by container. */
    public record Check(String says, boolean passes, List<String> sentences, List<Container> containers) {
        public Check {
            sentences = List.copyOf(sentences);
            containers = List.copyOf(containers);
        }
    }

    /** One container of a check; {@code verdict} says how far it is short. */
    public record Container(int number, String net, String off, String verdict, boolean bad) {}

    /** Whether what is typed is to be confirmed before it is written down. */
    public boolean asks() {
        return typed.hasProblem("sure") || !typed.value("sure").isEmpty();
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
