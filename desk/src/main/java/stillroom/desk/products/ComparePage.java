package stillroom.desk.products;

import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;

/**
 * Two versions side by side.
 *
 * @param settled findings that only the left one has
 * @param arisen findings that only the right one has
 * @param shared how many findings both have
 */
public record ComparePage(
        Frame frame,
        Product product,
        FormulaVersion left,
        FormulaVersion right,
        List<Choice> numbers,
        List<Row> lines,
        List<Row> steps,
        List<Row> figures,
        List<Row> composition,
        List<Finding> settled,
        List<Finding> arisen,
        int shared) {
    public ComparePage {
        numbers = List.copyOf(numbers);
        lines = List.copyOf(lines);
        steps = List.copyOf(steps);
        figures = List.copyOf(figures);
        composition = List.copyOf(composition);
        settled = List.copyOf(settled);
        arisen = List.copyOf(arisen);
    }

    /**
     * What stands on both sides.
     *
     * @param change what differs, in words; empty where nothing does
     */
    public record Row(String what, String left, String right, String change) {
        public boolean differs() {
            return !change.isEmpty();
        }
    }

    public long changedLines() {
        return lines.stream().filter(Row::differs).count();
    }
}
