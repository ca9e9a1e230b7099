package stillroom.formulary.label;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stillroom.formulary.evaluation.Finding;

/**
 * What a label must carry, for one market on one day.
 *
 * @param heading the word before the list, such as "Ingredients"
 * @param ingredients in printing order
 * @param unlisted materials whose composition is not known, so that the list is not whole without them
 * @param netContent, batchCode, responsiblePerson, function as entered
 * @param findings what is missing, open because of ranges, or to be looked at before printing
 */
public record Label(
        String productName,
        String market,
        LocalDate asOf,
        LocalDate lawRecordedOn,
        String heading,
        List<LabelEntry> ingredients,
        List<String> unlisted,
        List<LabelWarning> warnings,
        List<String> precautions,
        String function,
        String netContent,
        String batchCode,
        String responsiblePerson,
        Optional<Durability> durability,
        List<Finding> findings) {
    public Label {
        ingredients = List.copyOf(ingredients);
        unlisted = List.copyOf(unlisted);
        warnings = List.copyOf(warnings);
        precautions = List.copyOf(precautions);
        findings = List.copyOf(findings);
    }

    /** The ingredient list as text to paste; what it lacks stands in it, so that nobody prints it as if it were whole. */
    public String ingredientText() {
        String gap = unlisted.isEmpty() ? "" : " [NOT COMPLETE, without " + String.join("; ", unlisted) + "]";
        return heading + ": " + ingredients.stream().map(LabelEntry::name).collect(Collectors.joining(", ")) + gap;
    }

    /** The names of the perfume allergens declared. */
    public List<String> allergens() {
        return ingredients.stream()
                .filter(entry -> entry.block() == LabelEntry.Block.ALLERGEN)
                .map(LabelEntry::name)
                .toList();
    }
}
