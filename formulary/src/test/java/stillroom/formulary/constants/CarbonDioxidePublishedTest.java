package stillroom.formulary.constants;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillroom.science.equilibrium.DissolvedGas;
import stillroom.science.equilibrium.EquilibriumSolver;
import stillroom.science.equilibrium.Solution;
import stillroom.science.equilibrium.WaterModel;

/** Water that stands open. */
class CarbonDioxidePublishedTest {

    /** Unpolluted rain: pH 5.6, the usual textbook figure, one decimal. */
    @Test
    void openWaterIsSour() {
        DissolvedGas air = CarbonDioxide.inAir(AcidConstantsFile.shipped(), 425);
        double pH = new EquilibriumSolver(WaterModel.STANDARD)
                .solve(Solution.water(25).openTo(air))
                .pH();
        assertThat(pH).isCloseTo(5.6, within(0.05));
    }

    /**
     * Plummer and Busenberg, Geochim. Cosmochim. Acta 46, 1011 (1982), their equation for Henry's constant, from memory.
     * A constant enthalpy follows it within 0.03 in the logarithm from 5 to 45 °C.
     */
    @ParameterizedTest
    @CsvSource({"5", "15", "25", "35", "45"})
    void solubilityFollowsTheTemperature(double celsius) {
        double t = celsius + 273.15;
        double log = 108.3865 + 0.01985076 * t - 6919.53 / t - 40.45154 * Math.log10(t) + 669365 / (t * t);
        double own = CarbonDioxide.inAir(AcidConstantsFile.shipped(), 1e6).neutralMolPerKg(celsius);
        assertThat(Math.log10(own)).isCloseTo(log, within(0.03));
    }
}
