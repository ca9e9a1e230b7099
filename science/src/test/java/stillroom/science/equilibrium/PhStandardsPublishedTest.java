package stillroom.science.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static stillroom.science.equilibrium.Acids.at25;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The primary and secondary pH standards, from their composition alone.
 *
 * <p>Published pH: IUPAC Recommendations 2002, Pure Appl. Chem. 74, 2169, and NBS (citrate and carbonate: J. Res. NBS
 * 73A, 37 (1969), read; phthalate: Partanen and Minkkinen, J. Chem. Eng. Data 42, 805 (1997), read; oxalate, phthalate,
 * phosphate, borate and carbonate at other temperatures: JIS Z 8802, read; the others from memory). The second figure is
 * an independent solver of the same model with the same constants, printed to four decimals.
 */
class PhStandardsPublishedTest {

    static Stream<Arguments> standards() {
        return Stream.of(
                Arguments.of("phthalate", phthalate(25), 4.005, 4.0125, 0.0533),
                Arguments.of("neutral phosphate", phosphate(25), 6.865, 6.8770, 0.1000),
                Arguments.of("blood phosphate", phosphates(25, 0.008695, 0.03043), 7.413, 7.4209, 0.1000),
                Arguments.of("borax", borax(25), 9.180, 9.1762, 0.0200),
                Arguments.of(
                        "tetroxalate", at25().with(Acids.OXALIC, 0.1).withIon("K+", 1, 0.05), 1.679, 1.6747, 0.0769),
                Arguments.of(
                        "carbonate",
                        at25().with(Acids.CARBONIC, 0.05).withIon("Na+", 1, 0.075),
                        10.012,
                        10.0038,
                        0.0999),
                Arguments.of(
                        "tartrate",
                        at25().with(Acids.TARTARIC, 0.0341).withIon("K+", 1, 0.0341),
                        3.557,
                        3.5554,
                        0.0404),
                Arguments.of("citrate", at25().with(Acids.CITRIC, 0.05).withIon("K+", 1, 0.05), 3.776, 3.7692, 0.0572),
                Arguments.of(
                        "acetate 0.1", at25().with(Acids.ACETIC, 0.2).withIon("Na+", 1, 0.1), 4.644, 4.6492, 0.1000),
                Arguments.of(
                        "acetate 0.01", at25().with(Acids.ACETIC, 0.02).withIon("Na+", 1, 0.01), 4.718, 4.7131, 0.01),
                Arguments.of("hydrochloric 0.1", at25().withIon("Cl-", -1, 0.1), 1.094, 1.1070, 0.1),
                Arguments.of("hydrochloric 0.01", at25().withIon("Cl-", -1, 0.01), 2.041, 2.0447, 0.01),
                Arguments.of("acetic 0.1", at25().with(Acids.ACETIC, 0.1), 2.88, 2.8810, 0.0014));
    }

    private static Solution phthalate(double celsius) {
        return Solution.water(celsius).with(Acids.PHTHALIC, 0.05).withIon("K+", 1, 0.05);
    }

    private static Solution phosphate(double celsius) {
        return phosphates(celsius, 0.025, 0.025);
    }

    private static Solution phosphates(double celsius, double dihydrogen, double hydrogen) {
        return Solution.water(celsius)
                .with(Acids.PHOSPHORIC, dihydrogen + hydrogen)
                .withIon("K+", 1, dihydrogen)
                .withIon("Na+", 1, 2 * hydrogen);
    }

    private static Solution borax(double celsius) {
        return Solution.water(celsius).with(Acids.BORIC, 0.04).withIon("Na+", 1, 0.02);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("standards")
    void eachStandardIsMet(String name, Solution solution, double published, double davies, double strength) {
        Equilibrium equilibrium = Acids.SOLVER.solve(solution);
        assertThat(equilibrium.pH()).isCloseTo(published, within(0.02)); // what a Davies model can do
        assertThat(equilibrium.pH()).isCloseTo(davies, within(0.0005)); // the arithmetic alone
        assertThat(equilibrium.ionicStrengthMolPerKg()).isCloseTo(strength, within(0.00006)); // digits printed
        assertThat(equilibrium.inRange()).isTrue();
        assertThat(published).isCloseTo(equilibrium.pH(), within(equilibrium.pHHalfWidth()));
    }

    /** JIS Z 8802 (confirmed 2011), read. */
    @ParameterizedTest
    @CsvSource({
        "5, 4.01, 6.95, 9.39",
        "10, 4.00, 6.92, 9.33",
        "15, 4.00, 6.90, 9.27",
        "20, 4.00, 6.88, 9.22",
        "30, 4.01, 6.85, 9.14",
        "40, 4.03, 6.84, 9.07",
        "50, 4.06, 6.83, 9.01"
    })
    void standardsFollowTheTemperature(double celsius, double phthalate, double phosphate, double borate) {
        assertThat(Acids.pH(phthalate(celsius))).isCloseTo(phthalate, within(0.05));
        assertThat(Acids.pH(phosphate(celsius))).isCloseTo(phosphate, within(0.05));
        assertThat(Acids.pH(borax(celsius))).isCloseTo(borate, within(0.05));
    }

    /** A solver without activities misses the phosphate standard by 0.33: the check above can fail. */
    @ParameterizedTest
    @CsvSource("0.0")
    void withoutActivitiesTheStandardsAreMissed(double noSlope) {
        var ideal = new EquilibriumSolver(new WaterModel(noSlope, 0.3, WaterModel.STANDARD.ionProduct()));
        assertThat(ideal.solve(phosphate(25)).pH() - 6.865).isCloseTo(0.33, within(0.01));
    }
}
