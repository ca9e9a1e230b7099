package stillroom.science.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NetContentsPublishedTest {
    /** Council Directive 76/211/EEC, annex I, 2.4 (table from memory; its ends join): both sides of each bound. */
    @ParameterizedTest
    @CsvSource({
        "5,0.5",
        "15,1.4",
        "30,2.7",
        "50,4.5",
        "51,4.5",
        "100,4.5",
        "125,5.7",
        "200,9",
        "250,9",
        "300,9",
        "400,12",
        "500,15",
        "750,15",
        "1000,15",
        "2000,30",
        "10000,150"
    })
    void tolerableNegativeError(String nominal, String expected) {
        assertThat(NetContents.tolerableNegativeError(new BigDecimal(nominal))).isEqualByComparingTo(expected);
    }

    @Test
    void outsideTheTableThereIsNoAnswer() {
        assertThatThrownBy(() -> NetContents.tolerableNegativeError(new BigDecimal("4.9")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Council Directive 76/211/EEC, annex II, 2.3: factors 0.503, 0.379 and 0.640, three digits printed. */
    @ParameterizedTest
    @CsvSource({"30,0.503", "50,0.379", "20,0.640"})
    void averageFactors(int containers, double printed) {
        assertThat(NetContents.averageFactor(containers)).isCloseTo(printed, offset(0.0005));
    }

    /** The same rule with n = 30, s = 0.9: 100 - 0.503245 * 0.9 = 99.5471 (recomputed): 99.6 passes, 99.5 does not. */
    @Test
    void leastMeanOfThirty() {
        assertThat(NetContents.leastMean(100, 0.9, 30)).isCloseTo(99.5471, offset(5e-5));
    }
}
