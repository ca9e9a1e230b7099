package stillroom.science.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static stillroom.science.equilibrium.Acids.at25;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Buffer tables and plain solutions. */
class BufferTablePublishedTest {

    /**
     * McIlvaine, J. Biol. Chem. 49, 183 (1921), read in a public copy: ml of 0.2 M Na2HPO4 and of 0.1 M citric acid to
     * 20 ml. Last figure: an independent Davies solver, three decimals printed. The published scale is Sørensen's and
     * ion pairs are left out, hence 0.2.
     */
    @ParameterizedTest
    @CsvSource({
        "2.2,0.40,2.230", "2.4,1.24,2.479", "2.6,2.18,2.698", "2.8,3.17,2.902", "3.0,4.11,3.094", "3.2,4.94,3.276",
        "3.4,5.70,3.463", "3.6,6.44,3.670", "3.8,7.10,3.874", "4.0,7.71,4.076", "4.2,8.28,4.275", "4.4,8.82,4.478",
        "4.6,9.35,4.700", "4.8,9.86,4.941", "5.0,10.30,5.164", "5.2,10.72,5.377", "5.4,11.15,5.585", "5.6,11.60,5.788",
        "5.8,12.09,5.991", "6.0,12.63,6.188", "6.2,13.22,6.374", "6.4,13.85,6.545", "6.6,14.55,6.713",
                "6.8,15.45,6.909",
        "7.0,16.47,7.126", "7.2,17.39,7.338", "7.4,18.17,7.551", "7.6,18.73,7.748", "7.8,19.15,7.949", "8.0,19.45,8.155"
    })
    void citratePhosphateTable(double published, double phosphateMl, double davies) {
        double phosphate = 0.2 * phosphateMl / 20;
        double citrate = 0.1 * (20 - phosphateMl) / 20;
        Equilibrium answer = Acids.SOLVER.solve(at25().with(Acids.PHOSPHORIC, phosphate)
                .with(Acids.CITRIC, citrate)
                .withIon("Na+", 1, 2 * phosphate));
        assertThat(answer.pH()).isCloseTo(published, within(0.2));
        assertThat(published).isCloseTo(answer.pH(), within(answer.pHHalfWidth()));
        assertThat(answer.pH()).isCloseTo(davies, within(0.001));
    }

    /**
     * Gomori, Methods in Enzymology 1, 138 (1955), from memory: ml of 0.2 M acetic acid and of 0.2 M sodium acetate to
     * 100 ml. His citrate table is left out: it contradicts the primary standard 0.05 m potassium dihydrogen citrate
     * (3.776, a third neutralised) by 0.2.
     */
    @ParameterizedTest
    @CsvSource({"3.6,46.3,3.7", "4.0,41.0,9.0", "4.6,25.5,24.5", "5.0,14.8,35.2", "5.6,4.8,45.2"})
    void acetateTable(double published, double acidMl, double acetateMl) {
        isNear(
                published,
                at25().with(Acids.ACETIC, 0.2 * (acidMl + acetateMl) / 100).withIon("Na+", 1, 0.2 * acetateMl / 100));
    }

    /** Same source, from memory: ml of 0.2 M NaH2PO4 and of 0.2 M Na2HPO4 to 200 ml. */
    @ParameterizedTest
    @CsvSource({"5.8,92.0,8.0", "6.4,73.5,26.5", "6.8,51.0,49.0", "7.0,39.0,61.0", "7.4,19.0,81.0", "8.0,5.3,94.7"})
    void phosphateTable(double published, double dihydrogenMl, double hydrogenMl) {
        isNear(
                published,
                at25().with(Acids.PHOSPHORIC, 0.2 * (dihydrogenMl + hydrogenMl) / 200)
                        .withIon("Na+", 1, 0.2 * (dihydrogenMl + 2 * hydrogenMl) / 200));
    }

    /** Same source, from memory: 50 ml of 0.2 M tris and ml of 0.2 M hydrochloric acid to 200 ml, at 23 °C. */
    @ParameterizedTest
    @CsvSource({"7.2,44.2", "7.6,38.4", "8.0,26.8", "8.4,16.5", "9.0,5.0"})
    void trisTable(double published, double acidMl) {
        isNear(published, Solution.water(23).with(Acids.TRIS, 0.05).withIon("Cl-", -1, 0.2 * acidMl / 200));
    }

    private static void isNear(double published, Solution solution) {
        Equilibrium answer = Acids.SOLVER.solve(solution);
        assertThat(answer.pH()).isCloseTo(published, within(0.2));
        assertThat(published).isCloseTo(answer.pH(), within(answer.pHHalfWidth()));
    }

    /** An independent Davies solver, own recomputation; molar masses 192.124, 90.078, 144.105, 39.997 g/mol. */
    @Test
    void plainSolutions() {
        assertThat(Acids.pH(at25().with(Acids.CITRIC, perKg(0.1, 0.1, 192.124))))
                .isCloseTo(2.786, within(0.01));
        assertThat(Acids.pH(at25().with(Acids.LACTIC, perKg(0.2, 0.2, 90.078)))).isCloseTo(2.774, within(0.01));
        assertThat(Acids.pH(benzoate(0.5, 0.5))).isCloseTo(8.297, within(0.01));
        assertThat(Acids.pH(benzoate(0.5, 0.8).with(Acids.CITRIC, perKg(0.3, 0.8, 192.124))))
                .isCloseTo(4.074, within(0.01));
        assertThat(Acids.pH(at25().withIon("Na+", 1, perKg(0.1, 0.1, 39.997)))).isCloseTo(12.328, within(0.01));
    }

    private static Solution benzoate(double percent, double percentDissolved) {
        double molPerKg = perKg(percent, percentDissolved, 144.105);
        return at25().with(Acids.BENZOIC, molPerKg).withIon("Na+", 1, molPerKg);
    }

    private static double perKg(double percent, double percentDissolved, double gramsPerMol) {
        return 1000 * percent / gramsPerMol / (100 - percentDissolved);
    }

    /**
     * Undissociated share of benzoic acid at pH 3, 4, 5, 6, 7: Ash, Food Additives Data Book, p. 750 (read), within 2.5
     * percentage points; the share at the same pH without activities to 0.001 (Henderson-Hasselbalch, recomputed).
     */
    @ParameterizedTest
    @CsvSource({"3,93.5,94.116", "4,59.3,61.532", "5,12.8,13.790", "6,1.44,1.574", "7,0.144,0.160"})
    void undissociatedBenzoicAcid(double pH, double published, double recomputed) {
        double share = 100 * neutralShare(Acids.BENZOIC, pH);
        assertThat(share).isCloseTo(published, within(2.5));
        assertThat(share).isCloseTo(recomputed, within(1e-3));
    }

    /** Henderson-Hasselbalch, recomputed: sorbic 4.76, dehydroacetic 5.27, salicylic 2.98, propionic 4.87, 8.17. */
    @ParameterizedTest
    @CsvSource({
        "4.76,4.5,64.535",
        "4.76,6,5.441",
        "5.27,5,65.060",
        "5.27,7,1.828",
        "2.98,3,48.849",
        "4.87,5.5,18.990",
        "8.17,7,93.667"
    })
    void undissociatedShareOfOtherPreservatives(double pKa, double pH, double recomputed) {
        assertThat(100 * neutralShare(AcidBase.of("acid", 0, pKa), pH)).isCloseTo(recomputed, within(1e-3));
    }

    /** A trace of the acid in an ideal solution held at a pH by a strong ion. */
    private static double neutralShare(AcidBase acid, double pH) {
        var ideal = new EquilibriumSolver(new WaterModel(0, 0.3, WaterModel.STANDARD.ionProduct()));
        double excess = Math.pow(10, -pH) - Math.pow(10, pH - 13.995);
        Solution solution = at25().with(acid, 1e-15).withIon("ion", excess > 0 ? -1 : 1, Math.abs(excess));
        Equilibrium answer = ideal.solve(solution);
        assertThat(answer.pH()).isCloseTo(pH, within(1e-7));
        return answer.species().get(2).molPerKg() / 1e-15;
    }
}
