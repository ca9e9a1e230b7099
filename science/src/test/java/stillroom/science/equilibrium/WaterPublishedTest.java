package stillroom.science.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The solvent and the activity equation. */
class WaterPublishedTest {

    /** Harned and Owen (1958) and CRC, from memory, three decimals. */
    @ParameterizedTest
    @CsvSource({"0,14.938", "20,14.163", "25,13.995", "30,13.836", "50,13.262"})
    void ionProductFollowsTheTemperature(double celsius, double published) {
        assertThat(WaterModel.STANDARD.ionProduct().pKaAt(celsius)).isCloseTo(published, within(0.003));
    }

    @Test
    void pureWaterIsHalfTheIonProduct() {
        assertThat(Acids.pH(Solution.water(25))).isCloseTo(13.995 / 2, within(1e-9));
    }

    /** The Davies equation with A = 0.509, recomputed in exact arithmetic, four decimals. */
    @ParameterizedTest
    @CsvSource({
        "0.001,0.9651,0.8674,0.7260", "0.01,0.9021,0.6622,0.3956", "0.05,0.8215,0.4555,0.1704",
        "0.1,0.7816,0.3732,0.1089", "0.2,0.7469,0.3112,0.0723", "0.5,0.7337,0.2898,0.0616"
    })
    void activityCoefficients(double strength, double one, double two, double three) {
        assertThat(WaterModel.STANDARD.activityCoefficient(1, strength, 25)).isCloseTo(one, within(1e-4));
        assertThat(WaterModel.STANDARD.activityCoefficient(-2, strength, 25)).isCloseTo(two, within(1e-4));
        assertThat(WaterModel.STANDARD.activityCoefficient(3, strength, 25)).isCloseTo(three, within(1e-4));
    }

    /** Tris at 37 °C: 7.748, Goldberg et al. 2002 and Bates and Hetzer 1961, from memory; with dCp = 0 7.750 recomputed. */
    @Test
    void trisAtBodyTemperature() {
        assertThat(Acids.TRIS.steps().get(0).pKaAt(37)).isCloseTo(7.748, within(0.02));
        assertThat(new Dissociation(8.072, 47.45, 0).pKaAt(37)).isCloseTo(7.750, within(0.0005));
    }

    /** Relative permittivity 80.18 at 20, 78.36 at 25 (78.30 by this equation); density 998.207, 997.047: from
     * memory. A few parts per million do not matter under the square root where it is used. */
    @Test
    void propertiesOfWater() {
        assertThat(WaterProperties.permittivity(25)).isCloseTo(78.30, within(0.02));
        assertThat(WaterProperties.densityKgPerCubicMetre(20)).isCloseTo(998.207, within(0.005));
        assertThat(WaterProperties.densityKgPerCubicMetre(25)).isCloseTo(997.047, within(0.005));
    }

    /**
     * Debye-Hückel slope: 0.4918 at 0 °C, 0.5115 at 25 °C, 0.5341 at 50 °C: Robinson and Stokes, Electrolyte Solutions
     * (1959), from memory. Only the ratio is used.
     */
    @Test
    void debyeHueckelSlopeFollowsTheTemperature() {
        assertThat(WaterProperties.debyeHueckelRatio(0)).isCloseTo(0.4918 / 0.5115, within(0.003));
        assertThat(WaterProperties.debyeHueckelRatio(50)).isCloseTo(0.5341 / 0.5115, within(0.003));
        assertThat(WaterModel.STANDARD.debyeHueckel(25)).isEqualTo(0.509);
    }
}
