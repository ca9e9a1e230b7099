package stillroom.desk.packs;

import java.util.List;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/** The kinds of containers. */
public record PacksPage(Frame frame, List<Row> rows, Typed typed) {
    public PacksPage {
        rows = List.copyOf(rows);
    }

    /** One kind. */
    public record Row(String name, String path, String what, String onHand) {}

    /** One kind with its lots. */
    public record One(
            Frame frame,
            String name,
            String path,
            Typed facts,
            Typed fresh,
            Typed count,
            String today,
            String currency,
            List<Lot> lots) {
        public One {
            lots = List.copyOf(lots);
        }
    }

    /** One lot. */
    public record Lot(String code, String says, String onHand, boolean held, boolean below, List<String> counts) {
        public Lot {
            counts = List.copyOf(counts);
        }
    }
}
