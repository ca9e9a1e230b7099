package stillroom.formulary.judgement.preservation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillroom.formulary.constants.AcidConstants;
import stillroom.formulary.constants.AcidConstantsFile;

class UndissociatedPublishedTest {
    private static final AcidConstants ACIDS = AcidConstantsFile.shipped();

    /** Printed percentages of benzoic acid: Ash, Food Additives Data Book, p. 750, read; tolerance for its other pKa. */
    @ParameterizedTest
    @CsvSource({"3, 93.5", "4, 59.3", "5, 12.8", "6, 1.44", "7, 0.144"})
    void benzoicAcidAsPrinted(double ph, double percent) {
        assertThat(100 * fraction("benzoic-acid", ph)).isEqualTo(percent, within(2.5));
    }

    /** Sorbic 98, 86, 37, 6.0, 0.6 and dehydroacetic 95.1, 65.8, 15.8, 1.9: Lück, from memory. */
    @ParameterizedTest
    @CsvSource({
        "sorbic-acid, 3, 98",
        "sorbic-acid, 4, 86",
        "sorbic-acid, 5, 37",
        "sorbic-acid, 6, 6.0",
        "sorbic-acid, 7, 0.6",
        "dehydroacetic-acid, 4, 95.1",
        "dehydroacetic-acid, 5, 65.8",
        "dehydroacetic-acid, 6, 15.8"
    })
    void otherAcids(String acid, double ph, double percent) {
        assertThat(100 * fraction(acid, ph)).isEqualTo(percent, within(2.5));
    }

    /** Recomputed from the constants of the table to three decimals. */
    @ParameterizedTest
    @CsvSource({
        "benzoic-acid, 4.5, 33.591", "sorbic-acid, 5.5, 15.395", "dehydroacetic-acid, 5, 65.060",
        "salicylic-acid, 4, 8.717", "propionic-acid, 5, 42.572", "methylparaben, 7, 93.667"
    })
    void recomputed(String acid, double ph, double percent) {
        assertThat(100 * fraction(acid, ph)).isEqualTo(percent, within(1e-3));
    }

    private static double fraction(String acid, double ph) {
        return Undissociated.fraction(ACIDS.find(acid).orElseThrow(), ph);
    }
}
