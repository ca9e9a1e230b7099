package stillroom.desk.batches.freehand;

import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/** The form that begins a batch without a formula. */
public record FreeHandPage(
        Frame frame, Typed typed, List<Choice> products, List<Choice> types, String code, String who) {
    public FreeHandPage {
        products = List.copyOf(products);
        types = List.copyOf(types);
    }
}
