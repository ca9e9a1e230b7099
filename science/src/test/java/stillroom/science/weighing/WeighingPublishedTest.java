package stillroom.science.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeighingPublishedTest {
    /** USP general chapter 41, Balances: the worked example s = 0.00015 g gives 0.30000 g. */
    @Test
    void pharmacopoeialMinimumWeightOfItsExample() {
        BigDecimal s = MinimumWeight.deviation(Optional.of(d("0.00015")), d("0.0001"));
        assertThat(MinimumWeight.pharmacopoeial(s)).isEqualByComparingTo("0.3");
    }

    /** USP general chapter 41: the lowest possible minimum weight is 820 d; rows recomputed from that. */
    @ParameterizedTest
    @CsvSource({"0.1,82", "0.01,8.2", "0.001,0.82", "0.0001,0.082"})
    void lowestMinimumWeightIs820Steps(String step, String minimum) {
        BigDecimal s = MinimumWeight.deviation(Optional.empty(), d(step));
        assertThat(MinimumWeight.pharmacopoeial(s)).isEqualByComparingTo(minimum);
    }

    /** The same rule for other tolerances, recomputed from USP 41: 200 s / tolerance %. */
    @ParameterizedTest
    @CsvSource({"0.01,1,0.82", "0.01,0.5,1.64", "0.01,2,0.41", "0.1,2,4.1"})
    void minimumWeightForATolerance(String step, String tolerance, String minimum) {
        BigDecimal s = MinimumWeight.deviation(Optional.of(BigDecimal.ZERO), d(step));
        assertThat(MinimumWeight.of(s, d(tolerance))).isEqualByComparingTo(minimum);
    }

    /** ISO 80000-1:2009 annex B, rule A: a tie goes to the even multiple. */
    @ParameterizedTest
    @CsvSource({"2.5,1,2", "3.5,1,4", "0.125,0.01,0.12", "0.135,0.01,0.14", "30.8625,0.01,30.86", "30.865,0.01,30.86"})
    void tiesGoToTheEvenStep(String value, String step, String rounded) {
        assertThat(Steps.nearest(d(value), d(step))).isEqualByComparingTo(rounded);
    }

    /** Largest remainder on three near-equal thirds, arithmetic by hand. */
    @Test
    void thirdsOfAHundredGramsAddUp() {
        List<Share> shares = List.of(third("33.333"), third("33.333"), third("33.334"));
        Apportioned done = Apportionment.spread(shares, d("100"));
        assertThat(((Apportioned.Exactly) done).parts())
                .usingComparatorForType(BigDecimal::compareTo, BigDecimal.class)
                .containsExactly(d("33.3"), d("33.3"), d("33.4"));
    }

    /** JCGM 100:2008 5.1.2 by hand for 1 g and 99 g, each +-0.01 g: sqrt(0.99^2 + 0.01^2) * 0.01 % = 0.00990050 %. */
    @Test
    void uncertaintyOfAShareOfTwoWeighings() {
        List<ShareUncertainty.Weighed> parts = List.of(
                new ShareUncertainty.Weighed(d("1"), d("0.01")), new ShareUncertainty.Weighed(d("99"), d("0.01")));
        assertThat(ShareUncertainty.percent(parts, 0).doubleValue()).isCloseTo(0.0099005, within(1e-8));
        assertThat(ShareUncertainty.percent(parts, 1).doubleValue()).isCloseTo(0.0099005, within(1e-8));
    }

    /** Two readings add in quadrature (JCGM 100:2008 5.1.2): 0.41 * sqrt 2 = 0.57983. */
    @Test
    void twoReadingsAddInQuadrature() {
        assertThat(MinimumWeight.ofTwoReadings(d("0.41")).doubleValue()).isCloseTo(0.579828, within(1e-6));
    }

    /** Arithmetic by hand: 20 x 100 g and 50 g aside at 10 % loss need 2050 / 0.9 g, not 2050 * 1.1 g. */
    @Test
    void lossDividesWhatIsMade() {
        BigDecimal made = MixtureMass.toFill(20, d("100"), d("50"), d("10"));
        assertThat(made.doubleValue()).isCloseTo(2277.777778, within(1e-6));
        assertThat(MixtureMass.fill(d("250"), d("1.02"), d("2"))).isEqualByComparingTo("257");
    }

    private static Share third(String exact) {
        return Share.free(d(exact), d("0.1"));
    }

    private static org.assertj.core.data.Offset<Double> within(double tolerance) {
        return org.assertj.core.data.Offset.offset(tolerance);
    }

    private static BigDecimal d(String figure) {
        return new BigDecimal(figure);
    }
}
