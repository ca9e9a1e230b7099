package stillroom.formulary.material;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.PercentRange;
import stillroom.formulary.quantity.Price;

/**
 * The card of a raw material as bought: one revision of it, dated, never changed once a later one exists.
 *
 * @param key stable key of the material over all its revisions, lower case with hyphens
 * @param revision 1 for the first card, one more for each change
 * @param revisedOn the day of this revision
 * @param name what the maker calls it, in generic words
 * @param family the shelf on which it stands
 * @param functions what it does, as the trade says: "humectant", "primary surfactant"
 * @param composition its constituents; empty means "not known" and is reported, never taken as pure
 * @param strength with its basis, where one is stated
 * @param usage usual range of use [% of the product]
 * @param workingPh range in which it works or keeps
 * @param ownPh pH of the material or of its stated dilution, as the data sheet gives it
 * @param densityGramsPerMillilitre at about 20 degrees Celsius
 * @param solubility in words
 * @param maxCelsius highest processing temperature [degrees Celsius]
 * @param cautions for the person who handles it
 * @param grade, supplier, price the maker's own facts; the starter library leaves them empty
 * @param sources for each fact (the component's name, such as "usage") where it comes from
 */
public record Material(
        String key,
        int revision,
        LocalDate revisedOn,
        String name,
        Family family,
        List<String> functions,
        List<Constituent> composition,
        Optional<Strength> strength,
        Optional<PercentRange> usage,
        Optional<Interval> workingPh,
        Optional<Interval> ownPh,
        Optional<Double> densityGramsPerMillilitre,
        String solubility,
        Optional<Double> maxCelsius,
        List<String> cautions,
        String grade,
        String supplier,
        Optional<Price> price,
        String note,
        Map<String, String> sources) {
    public Material {
        if (key.isBlank() || name.isBlank()) {
            throw new IllegalArgumentException("a material needs a key and a name");
        }
        functions = List.copyOf(functions);
        composition = List.copyOf(composition);
        cautions = List.copyOf(cautions);
        sources = Map.copyOf(sources);
    }
}
