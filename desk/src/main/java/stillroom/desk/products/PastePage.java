package stillroom.desk.products;

import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;

/**
 * Several lines at once, out of a spreadsheet.
 *
 * @param rows what was read of them, before anything is added
 */
public record PastePage(
        Frame frame, Product product, FormulaVersion version, Typed typed, List<Choice> phases, List<Row> rows) {
    public PastePage {
        phases = List.copyOf(phases);
        rows = List.copyOf(rows);
    }

    public String path() {
        return "/products/" + product.id() + "/versions/" + version.number();
    }

    /**
     * @param means the card that is meant, or that there is none
     * @param doubts what may be wrong, empty where nothing is
     */
    public record Row(String name, String amount, String means, boolean known, String doubts) {}
}
