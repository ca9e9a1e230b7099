package stillroom.desk.law;

import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.Product;

/** One version of a product by the law of two days. */
public record ProductLawPage(
        Frame frame,
        Product product,
        Typed typed,
        List<Choice> versions,
        String market,
        String from,
        String to,
        String recordedOn,
        List<Finding> appeared,
        List<Finding> gone,
        List<Pair> reweighed,
        List<SweepPage.PointRow> label,
        List<Turn> turns,
        int shared) {
    public ProductLawPage {
        versions = List.copyOf(versions);
        appeared = List.copyOf(appeared);
        gone = List.copyOf(gone);
        reweighed = List.copyOf(reweighed);
        label = List.copyOf(label);
        turns = List.copyOf(turns);
    }

    /** A finding that changes its weight. */
    public record Pair(String before, Finding after) {}

    /** A row that turns in between. */
    public record Turn(String day, String what, String rule, String name, String substances, String source) {}

    public boolean nothing() {
        return appeared.isEmpty() && gone.isEmpty() && reweighed.isEmpty() && label.isEmpty();
    }
}
