package stillroom.formulary.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.PercentRange;

class StarterLibraryPublishedTest {
    private static final StarterLibrary LIBRARY = StarterLibrary.load();

    /** Source: iupac-atomic-weights-2021, abridged table; the tolerance is that of five-digit weights. */
    @Test
    void molarMassesAreThoseOfTheFormulas() throws IOException {
        Map<String, Double> weights = new HashMap<>();
        for (NamedCsvRecord row : published("iupac-atomic-weights-2021/abridged.csv")) {
            weights.put(row.getField("element"), Double.valueOf(row.getField("atomic_weight")));
        }
        List<NamedCsvRecord> formulas = published("iupac-atomic-weights-2021/formulas.csv");
        assertThat(formulas).hasSizeGreaterThanOrEqualTo(20);
        for (NamedCsvRecord row : formulas) {
            assertThat(substance(row.getField("substance"))
                            .molarMassGramsPerMol()
                            .orElseThrow())
                    .as(row.getField("substance"))
                    .isCloseTo(mass(row.getField("formula"), weights), within(0.005));
        }
    }

    /**
     * Gram of acid, or of retinol, in a gram of salt or ester. Source: recomputed from iupac-atomic-weights-2021;
     * tolerance half of the last digit given.
     */
    @ParameterizedTest
    @CsvSource({
        "sodium-benzoate, benzoic-acid, 0.84746",
        "potassium-benzoate, benzoic-acid, 0.76225",
        "potassium-sorbate, sorbic-acid, 0.74644",
        "sodium-salicylate, salicylic-acid, 0.86270",
        "sodium-dehydroacetate, dehydroacetic-acid, 0.88438",
        "methylparaben, 4-hydroxybenzoic-acid, 0.90781",
        "ethylparaben, 4-hydroxybenzoic-acid, 0.83118",
        "propylparaben, 4-hydroxybenzoic-acid, 0.76648",
        "butylparaben, 4-hydroxybenzoic-acid, 0.71113",
        "sodium-methylparaben, 4-hydroxybenzoic-acid, 0.79321",
        "sodium-lactate, lactic-acid, 0.80384",
        "sodium-glycolate, glycolic-acid, 0.77577",
        "sodium-ascorbate, ascorbic-acid, 0.88904",
        "retinyl-palmitate, retinol, 0.54577",
        "retinyl-acetate, retinol, 0.87203"
    })
    void saltsAndEstersCountAsTheirParent(String key, String parentKey, double factor) {
        Parent parent = substance(key).parent().orElseThrow();
        assertThat(parent.substance()).isEqualTo(parentKey);
        double share = parent.units()
                * substance(parentKey).molarMassGramsPerMol().orElseThrow()
                / substance(key).molarMassGramsPerMol().orElseThrow();
        assertThat(share).isCloseTo(factor, within(1e-5));
    }

    /** Hydrates as anhydrous substance, nominal. Source: recomputed from iupac-atomic-weights-2021. */
    @ParameterizedTest
    @CsvSource({
        "citric-acid-monohydrate, citric-acid, 91.427, 0.01",
        "sodium-citrate, sodium-citrate, 87.75, 0.01",
        "magnesium-sulfate, magnesium-sulfate, 48.84, 0.01",
        "calcium-chloride, calcium-chloride, 75.49, 0.02",
        "disodium-edta, disodium-edta, 90.32, 0.05",
        "sodium-dehydroacetate, sodium-dehydroacetate, 91.34, 0.05"
    })
    void hydratesHoldTheirWater(String material, String substance, double percent, double tolerance) {
        assertThat(100 * share(material, substance).nominal()).isCloseTo(percent, within(tolerance));
    }

    @Test
    void eachPreservativeOfAnnexVThatATradeMeetsIsThere() throws IOException {
        List<NamedCsvRecord> names = published("cosing-annex-v-2026/names.csv");
        assertThat(names).hasSizeGreaterThan(60);
        for (NamedCsvRecord row : names) {
            assertThat(byName(row.getField("inci_name")))
                    .as(row.getField("inci_name"))
                    .hasValueSatisfying(
                            s -> assertThat(s.is("preservative-annex-v")).isTrue());
        }
        assertThat(LIBRARY.substances().stream().filter(s -> s.is("preservative-annex-v")))
                .hasSize(names.size());
    }

    @Test
    void eachLabelAllergenIsThereUnderItsLabelName() throws IOException {
        List<NamedCsvRecord> names = published("cosing-annex-iii-2026/allergens.csv");
        assertThat(names).hasSizeGreaterThan(70);
        for (NamedCsvRecord row : names) {
            Substance substance = byName(row.getField("label_name")).orElseThrow();
            assertThat(substance.casNumbers()).as(substance.inciName()).contains(row.getField("cas"));
            boolean old = Integer.parseInt(row.getField("entry")) <= 92;
            assertThat(substance.is(old ? "allergen-2003" : "allergen-2023"))
                    .as(substance.inciName())
                    .isTrue();
        }
        assertThat(LIBRARY.substances().stream().filter(s -> s.is("allergen-2003")))
                .as("the 26 of Directive 2003/15/EC")
                .hasSize(26);
    }

    /** Source: from memory, typical supply forms of the trade. */
    @ParameterizedTest
    @CsvSource({
        "sles-70, sodium-laureth-sulfate, 68, 72",
        "sles-27, sodium-laureth-sulfate, 26.5, 28.5",
        "sodium-lauryl-sulfate-powder, sodium-lauryl-sulfate, 90, 95",
        "sodium-coco-sulfate, sodium-coco-sulfate, 90, 95",
        "cocamidopropyl-betaine-30, cocamidopropyl-betaine, 29, 32",
        "coco-glucoside-52, coco-glucoside, 50, 53",
        "decyl-glucoside-52, decyl-glucoside, 50, 53",
        "lauryl-glucoside-51, lauryl-glucoside, 50, 53",
        "disodium-laureth-sulfosuccinate-30, disodium-laureth-sulfosuccinate, 29, 32",
        "sodium-lauroyl-sarcosinate-30, sodium-lauroyl-sarcosinate, 29, 31"
    })
    void activeMatterIsThatOfTheTrade(String material, String substance, String low, String high) {
        Strength strength = card(material).strength().orElseThrow();
        assertThat(strength.basis()).isEqualTo(Strength.Basis.ACTIVE);
        assertThat(strength.percent()).isEqualTo(PercentRange.of(low, high));
        assertThat(share(material, substance).lower()).isEqualTo(Double.parseDouble(low) / 100, within(1e-12));
        assertThat(share(material, substance).upper()).isEqualTo(Double.parseDouble(high) / 100, within(1e-12));
    }

    /** Source: from memory: 4.5 to 6 % salt, and 35 to 37 % dry residue, which is active and salt. */
    @Test
    void betaineBringsItsSalt() {
        MassFraction salt = share("cocamidopropyl-betaine-30", "sodium-chloride");
        assertThat(salt.lower()).isEqualTo(0.045);
        assertThat(salt.upper()).isEqualTo(0.06);
        double dry = 1 - share("cocamidopropyl-betaine-30", "water").nominal();
        assertThat(dry).isBetween(0.35, 0.37);
    }

    /** Source: from memory: 84 % at least; sold between 23 and 40 %. */
    @Test
    void isethionateAndGlutamateAreWithinTheTrade() {
        assertThat(share("sodium-cocoyl-isethionate", "sodium-cocoyl-isethionate")
                        .lower())
                .isGreaterThanOrEqualTo(0.84);
        assertThat(share("sodium-cocoyl-glutamate-30", "sodium-cocoyl-glutamate")
                        .lower())
                .isBetween(0.23, 0.40);
    }

    /** Source: ocl-2022, Table 4: figures used there must lie in the range that the card shows. */
    @ParameterizedTest
    @CsvSource({"cera-alba, 12", "isopropyl-myristate, 11.5", "stearic-acid, 15"})
    void requiredHlbHoldsThePublishedFigure(String key, double hlb) {
        assertThat(substance(key).requiredHlb().orElseThrow().contains(hlb)).isTrue();
    }

    /** Source: from memory, lists of the trade; glyceryl stearate 3.8 also ocl-2022, Table 4. */
    @ParameterizedTest
    @CsvSource({
        "sorbitan-laurate, 8.6",
        "sorbitan-palmitate, 6.7",
        "sorbitan-stearate, 4.7",
        "sorbitan-oleate, 4.3",
        "sorbitan-trioleate, 1.8",
        "sorbitan-sesquioleate, 3.7",
        "polysorbate-20, 16.7",
        "polysorbate-40, 15.6",
        "polysorbate-60, 14.9",
        "polysorbate-80, 15.0",
        "polysorbate-85, 11.0",
        "glyceryl-stearate, 3.8",
        "laureth-4, 9.7",
        "laureth-23, 16.9",
        "ceteth-20, 15.7",
        "steareth-2, 4.9",
        "steareth-20, 15.3",
        "steareth-21, 15.5",
        "oleth-20, 15.3",
        "peg-100-stearate, 18.8"
    })
    void hlbIsThatOfTheLists(String key, double hlb) {
        assertThat(substance(key).hlb()).contains(Interval.point(hlb));
    }

    /** The balance of Griffin is for non-ionic emulsifiers: it must stay empty where it does not apply. */
    @ParameterizedTest
    @CsvSource({
        "behentrimonium-methosulfate",
        "lecithin",
        "sodium-stearoyl-glutamate",
        "potassium-cetyl-phosphate",
        "cetearyl-glucoside",
        "acrylates-c10-30-alkyl-acrylate-crosspolymer"
    })
    void hlbStaysEmptyWhereItDoesNotApply(String key) {
        assertThat(substance(key).hlb()).isEmpty();
    }

    private static double mass(String formula, Map<String, Double> weights) {
        double mass = 0;
        Matcher atoms = Pattern.compile("([A-Z][a-z]?)(\\d*)").matcher(formula);
        while (atoms.find()) {
            int count = atoms.group(2).isEmpty() ? 1 : Integer.parseInt(atoms.group(2));
            mass += count * weights.getOrDefault(atoms.group(1), Double.NaN);
        }
        return mass;
    }

    private static List<NamedCsvRecord> published(String path) throws IOException {
        Path file = Path.of("src", "test", "resources", "published").resolve(path);
        try (var rows =
                CsvReader.builder().commentStrategy(CommentStrategy.SKIP).ofNamedCsvRecord(file)) {
            return rows.stream().toList();
        }
    }

    private static Substance substance(String key) {
        return LIBRARY.substance(key).orElseThrow();
    }

    private static Material card(String key) {
        return LIBRARY.material(key).orElseThrow();
    }

    private static Optional<Substance> byName(String inciName) {
        return LIBRARY.substances().stream()
                .filter(s -> s.inciName().equals(inciName))
                .findFirst();
    }

    private static MassFraction share(String material, String substance) {
        return card(material).composition().stream()
                .filter(c -> c.substance().equals(substance))
                .map(Constituent::massFraction)
                .findFirst()
                .orElseThrow();
    }
}
