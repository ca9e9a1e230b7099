package stillroom.desk.products;

import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;

/**
 * Everything that the page of one version shows.
 *
 * @param typed what stands in the fields and what is wrong with it
 * @param names of all cards, to choose from
 * @param stale present when the draft was changed elsewhere meanwhile
 */
public record FormulaPage(
        Frame frame,
        Product product,
        FormulaVersion version,
        Typed typed,
        List<PhaseView> phases,
        List<CardName> names,
        Amounts amounts,
        Optional<Stale> stale) {
    public FormulaPage {
        phases = List.copyOf(phases);
        names = List.copyOf(names);
    }

    public String path() {
        return "/products/" + product.id() + "/versions/" + version.number();
    }

    public List<Choice> phaseChoices() {
        return phases.stream()
                .map(phase -> new Choice(phase.id(), phase.name()))
                .toList();
    }

    /** A card as the list of names offers it. */
    public record CardName(String name, String inci) {}

    /**
     * A phase in the form.
     *
     * @param blankLines ids of the rows in which something new is typed; those after the first show when work reaches them
     * @param blankStep id of the row in which a new step is typed
     */
    public record PhaseView(
            String id,
            String name,
            String share,
            List<LineView> lines,
            List<StepView> steps,
            List<String> blankLines,
            String blankStep,
            boolean first,
            boolean last) {
        public PhaseView {
            lines = List.copyOf(lines);
            steps = List.copyOf(steps);
            blankLines = List.copyOf(blankLines);
        }
    }

    /**
     * A line in the form.
     *
     * @param inci what the material is, for the eye; empty where there is no card or no composition
     * @param resolved what the line comes to
     * @param unknown the typed name where no card has it, else empty
     * @param similar cards that may have been meant
     * @param findings told in full here; {@code toldElsewhere} only names the line beside which they are
     */
    public record LineView(
            String id,
            String key,
            String name,
            String inci,
            AmountKind kind,
            String resolved,
            String unknown,
            List<Suggestion> similar,
            List<Finding> findings,
            List<String> toldElsewhere,
            boolean first,
            boolean last) {
        public LineView {
            similar = List.copyOf(similar);
            findings = List.copyOf(findings);
            toldElsewhere = List.copyOf(toldElsewhere);
        }
    }

    /** A card that may have been meant by a name that no card has. */
    public record Suggestion(String key, String name) {}

    public record StepView(String id, String number, boolean first, boolean last) {}

    /**
     * The draft moved on elsewhere.
     *
     * @param differences what stands there and what was typed here, a sentence each
     */
    public record Stale(List<String> differences) {
        public Stale {
            differences = List.copyOf(differences);
        }
    }
}
