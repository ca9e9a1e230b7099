package stillroom.desk.chemistry;

import java.util.List;
import stillroom.desk.shell.Frame;

/**
 * What keeps a version, at its pH and over a span of pH.
 *
 * @param ph by which it is judged, in words; empty where none is known
 * @param phKnown whether there is one
 * @param activity water activity in words, or why there is none
 * @param challenge that only a test shows it
 */
public record PreservingPage(
        Frame frame,
        Studied of,
        String ph,
        boolean phKnown,
        List<State> states,
        List<Against> against,
        OverPh over,
        String activity,
        String activityHow,
        List<GrowthRow> growth,
        String boosters,
        String challenge) {
    public PreservingPage {
        states = List.copyOf(states);
        against = List.copyOf(against);
        growth = List.copyOf(growth);
    }

    /** One preservative at the product's pH; every figure in words, with its range. */
    public record State(
            String name,
            String total,
            String undissociated,
            String inOil,
            String inMicelles,
            String free,
            String soluble,
            String note) {}

    /** One preservative beside the published figures of one group of organisms. */
    public record Against(String name, String group, String published, String free, String stands, String source) {}

    /** A group of organisms and the water that it needs. */
    public record GrowthRow(String group, String least, String organism, String stands, String source) {}

    /**
     * The figures over pH, as curves and as a table.
     *
     * @param ph rising, comma-separated
     * @param low, high the product's own pH; empty where none is known
     * @param names of the preservatives, in the order of the table's columns
     */
    public record OverPh(
            String ph,
            String low,
            String high,
            List<String> names,
            List<Curve> undissociated,
            List<Curve> free,
            List<Row> rows) {
        public OverPh {
            names = List.copyOf(names);
            undissociated = List.copyOf(undissociated);
            free = List.copyOf(free);
            rows = List.copyOf(rows);
        }
    }

    /**
     * @param kind "most", or "least" for the lower end of a range
     * @param ink which colour; both ends of one preservative share it
     */
    public record Curve(String name, String kind, int ink, String values) {}

    /**
     * One pH of the table.
     *
     * @param own whether the product's own pH begins or lies here
     * @param cells for each preservative: undissociated share, then free in the water
     */
    public record Row(String ph, boolean own, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }
}
