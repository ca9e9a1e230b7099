package stillroom.formulary.judgement.pot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EmulsionPublishedTest {
    /**
     * Required HLB of five formulas; beeswax 12, isopropyl myristate 11.5, glyceryl monostearate 3.8, stearic acid 15,
     * seed oil 6.2. Source: OCL 2022, 29, ocl210096, table 4, read; printed to two decimals.
     */
    @ParameterizedTest
    @CsvSource({
        "1.5 7.5 7.5 12.5 5, 10.33",
        "1.5 7.5 7.5 10.5 5, 10.04",
        "1.5 7.5 7.5 8.5 5, 9.71",
        "1.5 7.5 7.5 6.5 5, 9.33",
        "1.5 10 10 10.5 5, 9.72"
    })
    void requiredHlbOfMixtures(String percents, double printed) {
        List<Double> masses =
                Arrays.stream(percents.split(" ")).map(Double::valueOf).toList();
        assertThat(Emulsion.blend(masses, List.of(12.0, 11.5, 3.8, 15.0, 6.2))).isEqualTo(printed, within(0.005));
    }

    /** Griffin's worked blend, 70 % polysorbate 80 (15.0) with 30 % sorbitan oleate (4.3): printed 11.8, from memory. */
    @Test
    void griffinsWorkedBlend() {
        assertThat(Emulsion.blend(List.of(70.0, 30.0), List.of(15.0, 4.3))).isEqualTo(11.8, within(0.05));
    }

    /** Polysorbate 60 (14.9) and sorbitan stearate (4.7); recomputed. */
    @Test
    void pairForARequiredHlb() {
        assertThat(Emulsion.firstOfPair(10, 14.9, 4.7).orElseThrow()).isEqualTo(0.5196, within(5e-5));
        assertThat(Emulsion.firstOfPair(7.6, 14.9, 4.7).orElseThrow()).isEqualTo(0.2843, within(5e-5));
        assertThat(Emulsion.firstOfPair(16, 14.9, 4.7)).isEmpty();
    }
}
