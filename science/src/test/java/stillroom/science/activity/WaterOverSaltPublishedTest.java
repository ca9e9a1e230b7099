package stillroom.science.activity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WaterOverSaltPublishedTest {
    /** Osmotic coefficients of sodium chloride at 25 °C: Robinson and Stokes, Electrolyte Solutions, from memory. */
    @ParameterizedTest
    @CsvSource({
        "0.1, 0.9324",
        "0.5, 0.9209",
        "1.0, 0.9355",
        "2.0, 0.9833",
        "3.0, 1.0453",
        "4.0, 1.1158",
        "5.0, 1.1916",
        "6.0, 1.2706"
    })
    void osmoticCoefficientOfSodiumChloride(double molPerKg, double tabled) {
        assertThat(WaterOverSalt.SODIUM_CHLORIDE.osmotic(molPerKg)).isEqualTo(tabled, within(0.004));
    }

    /** Saturated sodium chloride, 6.15 mol/kg, 25 °C: 0.7529, Greenspan, J. Res. NBS 81A, 89 (1977), from memory. */
    @Test
    void saturatedSodiumChloride() {
        assertThat(WaterOverSalt.SODIUM_CHLORIDE.waterActivity(6.15)).isEqualTo(0.7529, within(0.002));
    }
}
