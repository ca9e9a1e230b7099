package stillroom.desk.products;

import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Frame;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;

/**
 * One page of the products, by name. Each row is judged, so a page holds only as many as are quickly judged.
 *
 * @param before address of the page before; empty on the first
 * @param after address of the next; empty on the last
 */
public record ProductListPage(Frame frame, List<Row> rows, String before, String after) {
    static final int SIZE = 12;

    public ProductListPage {
        rows = List.copyOf(rows);
    }

    /**
     * One product.
     *
     * @param batches how many were made or begun
     * @param warnings of the newest version, in words; empty where there is no version
     */
    public record Row(Product product, Optional<FormulaVersion> newest, int batches, String warnings) {}
}
