package stillroom.formulary.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What stands on a label besides what follows from the formula.
 *
 * @param function what the product is for, unless its presentation says so
 * @param netContent as printed, such as "250 ml"; may be empty below 5 g or 5 ml
 * @param responsiblePerson name and address
 * @param batchCode may be empty on the label of a version, not on that of a batch
 * @param language of the place of sale, code such as {@code en}
 * @param durability empty as long as nobody recorded a reason
 * @param precautions the maker's or the assessor's own, beyond what the rules demand
 */
public record LabelInput(
        String productName,
        String function,
        String netContent,
        String responsiblePerson,
        String batchCode,
        String language,
        Optional<Durability> durability,
        List<String> precautions) {
    public LabelInput {
        precautions = List.copyOf(precautions);
    }

    /** What a label has to say besides formula and batch code and this one does not yet say, in words. */
    public List<String> missing() {
        List<String> missing = new ArrayList<>();
        if (responsiblePerson.isBlank()) {
            missing.add("name and address of the responsible person");
        }
        if (netContent.isBlank()) {
            missing.add("net content (not needed below 5 g or 5 ml)");
        }
        if (function.isBlank()) {
            missing.add("function (unless the presentation shows it)");
        }
        return List.copyOf(missing);
    }

    /** A first sketch in English with nothing but a name. */
    public static LabelInput named(String productName) {
        return new LabelInput(productName, "", "", "", "", "en", Optional.empty(), List.of());
    }
}
