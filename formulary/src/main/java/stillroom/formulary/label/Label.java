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
        warnings = List.copyOf(warnings);
        precautions = List.copyOf(precautions);
        findings = List.copyOf(findings);
    }

    /** The ingredient list as text to paste. */
    public String ingredientText() {
        return heading + ": " + ingredients.stream().map(LabelEntry::name).collect(Collectors.joining(", "));
    }

    /** The names of the perfume allergens declared. */
    public List<String> allergens() {
        return ingredients.stream()
                .filter(entry -> entry.block() == LabelEntry.Block.ALLERGEN)
                .map(LabelEntry::name)
                .toList();
    }
}
