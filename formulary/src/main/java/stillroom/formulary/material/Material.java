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
 * @param naturalOriginIndex natural origin index of ISO 16128 as the supplier states it or as it follows from the definition, 0 to 1
 * @param certificate of a perfume or an essential oil: highest use by category and furocoumarins, with its day
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
        Optional<Double> naturalOriginIndex,
        Map<String, String> sources,
        Optional<FragranceCertificate> certificate) {
    static final String SOURCE_GLUE = "; ";
    private static final LocalDate FIRST_REVISION = LocalDate.of(2026, 1, 1);

    public Material {
        if (key.isBlank() || name.isBlank()) {
            throw new IllegalArgumentException("a material needs a key and a name");
        }
        functions = List.copyOf(functions);
        composition = List.copyOf(composition);
        cautions = List.copyOf(cautions);
        sources = Map.copyOf(sources);
    }

    /** A card without a certificate of a perfume. */
    public Material(
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
            Optional<Double> naturalOriginIndex,
            Map<String, String> sources) {
        this(
                key,
                revision,
                revisedOn,
                name,
                family,
                functions,
                composition,
                strength,
                usage,
                workingPh,
                ownPh,
                densityGramsPerMillilitre,
                solubility,
                maxCelsius,
                cautions,
                grade,
                supplier,
                price,
                note,
                naturalOriginIndex,
                sources,
                Optional.empty());
    }

    /** A bare first card on which nothing but its name is known. */
    public static Material named(String key, String name, Family family) {
        return new Material(
                key,
                1,
                FIRST_REVISION,
                name,
                family,
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "",
                Optional.empty(),
                List.of(),
                "",
                "",
                Optional.empty(),
                "",
                Optional.empty(),
                Map.of());
    }

    /** The same card with this composition. */
    public Material withComposition(Constituent... constituents) {
        return new Material(
                key,
                revision,
                revisedOn,
                name,
                family,
                functions,
                List.of(constituents),
                strength,
                usage,
                workingPh,
                ownPh,
                densityGramsPerMillilitre,
                solubility,
                maxCelsius,
                cautions,
                grade,
                supplier,
                price,
                note,
                naturalOriginIndex,
                sources,
                certificate);
    }

    /** The same card under another key. */
    public Material withKey(String other) {
        return new Material(
                other,
                revision,
                revisedOn,
                name,
                family,
                functions,
                composition,
                strength,
                usage,
                workingPh,
                ownPh,
                densityGramsPerMillilitre,
                solubility,
                maxCelsius,
                cautions,
                grade,
                supplier,
                price,
                note,
                naturalOriginIndex,
                sources,
                certificate);
    }

    /** The same card as another revision. */
    public Material withRevision(int number) {
        return new Material(
                key,
                number,
                revisedOn,
                name,
                family,
                functions,
                composition,
                strength,
                usage,
                workingPh,
                ownPh,
                densityGramsPerMillilitre,
                solubility,
                maxCelsius,
                cautions,
                grade,
                supplier,
                price,
                note,
                naturalOriginIndex,
                sources,
                certificate);
    }

    /** The same card with what its maker certifies. */
    public Material withCertificate(FragranceCertificate certified) {
        return new Material(
                key,
                revision,
                revisedOn,
                name,
                family,
                functions,
                composition,
                strength,
                usage,
                workingPh,
                ownPh,
                densityGramsPerMillilitre,
                solubility,
                maxCelsius,
                cautions,
                grade,
                supplier,
                price,
                note,
                naturalOriginIndex,
                sources,
                Optional.of(certified));
    }
}
