package stillroom.desk.products;

import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Frame;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;

/** All products. */
public record ProductListPage(Frame frame, List<Row> rows) {
    public ProductListPage {
        rows = List.copyOf(rows);
    }

    /**
     * One product.
     *
     * @param batches how many were made or begun
     * @param warnings of the newest version
     */
    public record Row(Product product, Optional<FormulaVersion> newest, int batches, int warnings) {}
}
