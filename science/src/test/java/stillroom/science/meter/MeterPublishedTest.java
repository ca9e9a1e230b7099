package stillroom.science.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillroom.science.equilibrium.AcidBase;
import stillroom.science.equilibrium.Dissociation;
import stillroom.science.equilibrium.EquilibriumSolver;
import stillroom.science.equilibrium.Solution;
import stillroom.science.equilibrium.WaterModel;

/** Buffers, slope and calibration. */
class MeterPublishedTest {

    /** Nernst slope: 59.16 mV at 25 °C, 58.17 at 20, 61.54 at 37: textbook figures, two decimals. */
    @ParameterizedTest
    @CsvSource({"20,58.17", "25,59.16", "37,61.54"})
    void nernstSlope(double celsius, double millivolt) {
        assertThat(Electrode.nernstMillivolt(celsius)).isCloseTo(millivolt, within(0.006));
    }

    /** Hetzer, Durst, Robinson, Bates, J. Res. NBS 81A, 21 (1977), abstract read: their equation for phthalate. */
    @ParameterizedTest
    @CsvSource({"0", "5", "10", "15", "20", "25", "30", "35", "40", "45", "50"})
    void phthalateTableAgreesWithHetzer(double celsius) {
        double kelvin = celsius + 273.15;
        double hetzer = 2073.44 / kelvin - 13.3270 + 0.045199 * kelvin - 3.4846e-5 * kelvin * kelvin;
        double table = ReferenceBuffers.PHTHALATE.pHAt(celsius).orElseThrow();
        assertThat(table).isCloseTo(hetzer, within(0.011)); // two decimals, and 0.003 between the two evaluations
    }

    /** The bottle named 10.01 is the carbonate standard: two tables of two sources agree. */
    @Test
    void bottleTenIsTheCarbonateStandard() {
        for (double celsius : List.of(0., 5., 10., 15., 20., 25., 30., 35.)) {
            assertThat(ReferenceBuffers.BOTTLE_10.pHAt(celsius).orElseThrow())
                    .isCloseTo(ReferenceBuffers.CARBONATE.pHAt(celsius).orElseThrow(), within(0.0101));
        }
    }

    /** The bottle named 7.00, from its composition (0.041 Na2HPO4 and 0.026 KH2PO4, read beside the table). */
    @ParameterizedTest
    @CsvSource({"5", "15", "25", "40", "50"})
    void bottleSevenFollowsFromItsComposition(double celsius) {
        AcidBase phosphoric = new AcidBase(
                "phosphoric",
                0,
                List.of(
                        new Dissociation(2.148, -8.0, -141),
                        new Dissociation(7.198, 3.6, -230),
                        new Dissociation(12.375, 16.0, -242)));
        Solution solution = Solution.water(celsius)
                .with(phosphoric, 0.067)
                .withIon("Na+", 1, 0.082)
                .withIon("K+", 1, 0.026);
        double computed =
                new EquilibriumSolver(WaterModel.STANDARD).solve(solution).pH();
        assertThat(computed).isCloseTo(ReferenceBuffers.BOTTLE_7.pHAt(celsius).orElseThrow(), within(0.05));
    }

    @Test
    void tablesAreReadBetweenTheirRowsAndNotBeyond() {
        assertThat(ReferenceBuffers.BORATE.pHAt(22.5).orElseThrow()).isCloseTo(9.20, within(1e-12));
        assertThat(ReferenceBuffers.BORATE.pHAt(50)).hasValue(9.01);
        assertThat(ReferenceBuffers.CARBONATE.pHAt(40)).isEmpty();
        assertThat(ReferenceBuffers.all())
                .hasSize(8)
                .allSatisfy(table -> assertThat(table.pHAt(25)).isPresent());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BufferTable("own", "bottle", List.of(25., 20.), List.of(4., 4.)));
    }

    @Test
    void slopeFromVoltages() {
        var acid = new Electrode.Point(4.01, 176.9 * 0.97 + 5);
        var neutral = new Electrode.Point(7, 5);
        assertThat(Electrode.slopePercent(acid, neutral, 25)).isCloseTo(97, within(0.02));
        assertThat(Electrode.offsetMillivolt(acid, neutral)).isCloseTo(5, within(1e-9));
    }

    private static Calibration calibration(Optional<Calibration.Slope> slope, Optional<Calibration.Check> check) {
        return new Calibration(ReferenceBuffers.BOTTLE_4, ReferenceBuffers.BOTTLE_7, 20, slope, check);
    }

    @Test
    void slopeOffsetAndThirdBufferAreJudged() {
        var good = Optional.of(new Calibration.Slope(98, -4));
        var right = Optional.of(new Calibration.Check(ReferenceBuffers.BOTTLE_10, 20, 10.11));
        var wrong = Optional.of(new Calibration.Check(ReferenceBuffers.BOTTLE_10, 20, 10.01));
        assertThat(calibration(good, right).faults()).isEmpty();
        assertThat(calibration(Optional.of(new Calibration.Slope(94.9, 0)), right)
                        .faults())
                .singleElement()
                .asString()
                .contains("94.9");
        assertThat(calibration(Optional.of(new Calibration.Slope(98, 31)), right)
                        .faults())
                .hasSize(1);
        // 10.01 is the name of the bottle: at 20 °C it must read 10.06, so 10.01 is 0.05 low and just allowed.
        assertThat(calibration(good, wrong).faults()).isEmpty();
        assertThat(calibration(good, Optional.of(new Calibration.Check(ReferenceBuffers.BOTTLE_10, 20, 10.00)))
                        .faults())
                .hasSize(1);
        assertThat(calibration(Optional.empty(), Optional.empty()).faults()).hasSize(1);
    }

    @Test
    void buffersBracketTheTarget() {
        Calibration calibration = calibration(Optional.empty(), Optional.empty());
        assertThat(calibration.brackets(5.5)).isTrue();
        assertThat(calibration.brackets(7.02)).isTrue();
        assertThat(calibration.brackets(7.5)).isFalse();
    }
}
