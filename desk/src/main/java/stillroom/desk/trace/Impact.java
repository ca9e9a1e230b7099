package stillroom.desk.trace;

import java.util.List;

/**
 * All that a trace found, as page and sheet show it.
 *
 * @param about what was traced
 * @param holdable whether there is something that a hold would stop
 */
public record Impact(
        String about,
        List<Lot> lots,
        List<Batch> batches,
        List<Holder> holders,
        Totals totals,
        List<String> todo,
        List<Source> sources,
        boolean holdable) {
    public Impact {
        lots = List.copyOf(lots);
        batches = List.copyOf(batches);
        holders = List.copyOf(holders);
        todo = List.copyOf(todo);
        sources = List.copyOf(sources);
    }

    /** One lot on the shelf; {@code path} is empty where no such lot is booked. */
    public record Lot(String code, String path, String material, String made, String onHand, String state) {}

    /** One batch. */
    public record Batch(
            String code,
            String path,
            String product,
            String stage,
            String stageStyle,
            String direct,
            String filled,
            String onShelf,
            String out,
            String withdrawn,
            String reconciled,
            String seen) {}

    /** Who has units of it. */
    public record Holder(String name, String batch, String units) {}

    /** Over all batches. */
    public record Totals(
            String filled, String onShelf, String out, String withdrawn, String accounted, String percent) {}

    /** What it was made from, back to what was bought. */
    public record Source(String code, String path, String material, String supplier, boolean raw) {}

    public boolean empty() {
        return lots.isEmpty() && batches.isEmpty();
    }
}
