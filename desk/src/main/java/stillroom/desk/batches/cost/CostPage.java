package stillroom.desk.batches.cost;

import java.util.List;
import stillroom.desk.batches.BatchHead;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/**
 * What a batch cost.
 *
 * @param currency of the workshop
 * @param tax whether prices are with or without tax, in words
 * @param parts from the dearest material down, then the rest; together the total
 * @param price what a container has to bring for the margin; empty while nothing is filled
 */
public record CostPage(
        Frame frame,
        BatchHead head,
        Typed typed,
        String currency,
        String tax,
        List<Part> parts,
        String total,
        int containers,
        String each,
        String lost,
        String margin,
        String price,
        List<String> unpriced,
        String packHint,
        boolean withTax,
        boolean carriesRejected) {
    public CostPage {
        parts = List.copyOf(parts);
        unpriced = List.copyOf(unpriced);
    }

    /**
     * One part of the cost.
     *
     * @param percent of the total, 0 to 100
     * @param rise address of what a dearer price does; empty where it is no material
     */
    public record Part(String name, String amount, String each, int percent, String rise) {}

    /** What a dearer material does. */
    public record Rise(
            Frame frame,
            Typed typed,
            List<stillroom.desk.shell.Choice> materials,
            String currency,
            String about,
            List<Product> products) {
        public Rise {
            materials = List.copyOf(materials);
            products = List.copyOf(products);
        }
    }

    /** One product that it touches, by its newest filled batch. */
    public record Product(
            String name, String batch, String path, String now, String more, String then, String percent) {}
}
