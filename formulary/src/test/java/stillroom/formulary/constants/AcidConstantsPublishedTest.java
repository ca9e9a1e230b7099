package stillroom.formulary.constants;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillroom.science.equilibrium.EquilibriumSolver;
import stillroom.science.equilibrium.Solution;
import stillroom.science.equilibrium.WaterModel;

/** The shipped table of acids and bases. */
class AcidConstantsPublishedTest {

    private static final AcidConstants TABLE = AcidConstantsFile.shipped();

    /** The acids and bases of the trade that a formula may hold. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "citric-acid",
                "lactic-acid",
                "glycolic-acid",
                "malic-acid",
                "tartaric-acid",
                "gluconic-acid",
                "ascorbic-acid",
                "acetic-acid",
                "benzoic-acid",
                "sorbic-acid",
                "dehydroacetic-acid",
                "salicylic-acid",
                "levulinic-acid",
                "p-anisic-acid",
                "phosphoric-acid",
                "boric-acid",
                "carbonic-acid",
                "edta",
                "glda",
                "sodium-hydroxide",
                "potassium-hydroxide",
                "ammonia",
                "triethanolamine",
                "tromethamine",
                "arginine",
                "aminomethyl-propanol",
                "betaine",
                "glycine",
                "lauric-acid",
                "stearic-acid",
                "oleic-acid"
            })
    void theTradesAcidsAndBasesArePresent(String key) {
        assertThat(TABLE.find(key)).isPresent();
    }

    /** Molar masses from the formula with the standard atomic weights of IUPAC (2021, abridged). */
    @ParameterizedTest
    @CsvSource({
        "citric-acid,C6H8O7",
        "lactic-acid,C3H6O3",
        "glycolic-acid,C2H4O3",
        "malic-acid,C4H6O5",
        "tartaric-acid,C4H6O6",
        "gluconic-acid,C6H12O7",
        "ascorbic-acid,C6H8O6",
        "acetic-acid,C2H4O2",
        "formic-acid,CH2O2",
        "propionic-acid,C3H6O2",
        "benzoic-acid,C7H6O2",
        "sorbic-acid,C6H8O2",
        "dehydroacetic-acid,C8H8O4",
        "salicylic-acid,C7H6O3",
        "levulinic-acid,C5H8O3",
        "p-anisic-acid,C8H8O3",
        "mandelic-acid,C8H8O3",
        "succinic-acid,C4H6O4",
        "adipic-acid,C6H10O4",
        "oxalic-acid,C2H2O4",
        "malonic-acid,C3H4O4",
        "phthalic-acid,C8H6O4",
        "pyrrolidone-carboxylic-acid,C5H7NO3",
        "phosphoric-acid,H3PO4",
        "boric-acid,H3BO3",
        "carbonic-acid,CO2",
        "sulfuric-acid,HSO4",
        "sulfurous-acid,SO2",
        "edta,C10H16N2O8",
        "glda,C9H13NO8",
        "ammonia,NH3",
        "triethanolamine,C6H15NO3",
        "diethanolamine,C4H11NO2",
        "ethanolamine,C2H7NO",
        "tromethamine,C4H11NO3",
        "aminomethyl-propanol,C4H11NO",
        "arginine,C6H14N4O2",
        "lysine,C6H14N2O2",
        "histidine,C6H9N3O2",
        "glycine,C2H5NO2",
        "alanine,C3H7NO2",
        "serine,C3H7NO3",
        "proline,C5H9NO2",
        "glutamic-acid,C5H9NO4",
        "aspartic-acid,C4H7NO4",
        "betaine,C5H11NO2",
        "niacinamide,C6H6N2O",
        "methylparaben,C8H8O3",
        "ethylparaben,C9H10O3",
        "caprylic-acid,C8H16O2",
        "lauric-acid,C12H24O2",
        "myristic-acid,C14H28O2",
        "palmitic-acid,C16H32O2",
        "stearic-acid,C18H36O2",
        "oleic-acid,C18H34O2",
        "sodium-hydroxide,NaOH",
        "potassium-hydroxide,KOH",
        "hydrochloric-acid,HCl"
    })
    void molarMassesFollowTheFormula(String key, String formula) {
        double gramsPerMol = TABLE.find(key).orElseThrow().gramsPerMol();
        assertThat(gramsPerMol).isCloseTo(mass(formula), within(0.01)); // weights are abridged to three decimals
    }

    private static final Map<String, Double> WEIGHTS = Map.of(
            "H", 1.008, "B", 10.81, "C", 12.011, "N", 14.007, "O", 15.999, "Na", 22.990, "P", 30.974, "S", 32.06, "Cl",
            35.45, "K", 39.098);

    private static double mass(String formula) {
        Matcher matcher = Pattern.compile("([A-Z][a-z]?)(\\d*)").matcher(formula);
        double sum = 0;
        while (matcher.find()) {
            int count = matcher.group(2).isEmpty() ? 1 : Integer.parseInt(matcher.group(2));
            sum += count * Optional.ofNullable(WEIGHTS.get(matcher.group(1))).orElseThrow();
        }
        return sum;
    }

    /** Registry numbers end in a check digit: the weighted sum of the others modulo ten. */
    @Test
    void registryNumbersHaveTheirCheckDigit() {
        assertThat(TABLE.all()).hasSizeGreaterThan(50).allSatisfy(row -> {
            String digits = row.cas().replace("-", "");
            int sum = 0;
            for (int i = 0; i < digits.length() - 1; i++) {
                sum += (digits.length() - 1 - i) * (digits.charAt(i) - '0');
            }
            assertThat(sum % 10).as(row.key()).isEqualTo(digits.charAt(digits.length() - 1) - '0');
        });
    }

    /**
     * Published pH at 25 °C from the shipped constants, IUPAC Recommendations 2002, Pure Appl. Chem. 74, 2169: potassium
     * dihydrogen citrate 3.776, hydrogen phthalate 4.005, hydrogen tartrate 3.557, tetroxalate 1.679, borax 9.180.
     */
    @ParameterizedTest
    @CsvSource({
        "citric-acid,0.05,0.05,3.776", "phthalic-acid,0.05,0.05,4.005", "tartaric-acid,0.0341,0.0341,3.557",
        "oxalic-acid,0.1,0.05,1.679", "boric-acid,0.04,0.02,9.180", "phosphoric-acid,0.05,0.075,6.865",
        "carbonic-acid,0.05,0.075,10.012", "acetic-acid,0.2,0.1,4.644"
    })
    void shippedConstantsMeetThePhStandards(String key, double acid, double alkali, double published) {
        Solution solution = Solution.water(25)
                .with(TABLE.find(key).orElseThrow().system(), acid)
                .withIon("alkali", 1, alkali);
        assertThat(new EquilibriumSolver(WaterModel.STANDARD).solve(solution).pH())
                .isCloseTo(published, within(0.02));
    }

    @Test
    void everyRowSaysWhereItComesFrom() {
        assertThat(TABLE.all())
                .allSatisfy(row -> assertThat(row.reference()).as(row.key()).isNotBlank());
        assertThat(TABLE.all().stream().filter(AcidConstant::read)).hasSizeGreaterThan(15);
    }

    @Test
    void soapsAreFlagged() {
        assertThat(List.of("lauric-acid", "oleic-acid", "stearic-acid"))
                .allSatisfy(key -> assertThat(TABLE.find(key).orElseThrow().formsMicelles())
                        .isTrue());
        assertThat(TABLE.find("citric-acid").orElseThrow().formsMicelles()).isFalse();
    }
}
