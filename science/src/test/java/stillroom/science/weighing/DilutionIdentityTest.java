package stillroom.science.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DilutionIdentityTest {
    private static final BigDecimal STEP = new BigDecimal("0.01");
    private static final BigDecimal MINIMUM = new BigDecimal("0.58");
    private static final BigDecimal TOLERANCE = new BigDecimal("0.02");
    private static final BigDecimal DEVIATION = new BigDecimal("0.0058");

    @Test
    void everyDilutionBringsWhatIsWantedWithinItsUncertainty() {
        Random random = new Random(1859);
        int one = 0;
        int two = 0;
        for (int run = 0; run < 1000; run++) {
            BigDecimal wanted = BigDecimal.valueOf(1 + random.nextInt(5000), 4);
            Optional<Dilution> found = Dilution.of(wish(wanted, "50"));
            if (found.isEmpty()) {
                continue;
            }
            Dilution dilution = found.get();
            one += dilution.steps().size() == 1 ? 1 : 0;
            two += dilution.steps().size() == 2 ? 1 : 0;
            double off = dilution.brings().subtract(wanted).abs().doubleValue();
            assertThat(off).isLessThanOrEqualTo(2 * dilution.deviation().doubleValue());
            assertThat(2 * dilution.deviation().doubleValue()).isLessThanOrEqualTo(0.02 * wanted.doubleValue());
            assertThat(dilution.portion()).isGreaterThanOrEqualTo(MINIMUM);
            dilution.steps().forEach(step -> {
                assertThat(step.concentrate()).isGreaterThanOrEqualTo(MINIMUM);
                assertThat(step.carrier()).isGreaterThanOrEqualTo(MINIMUM);
            });
            assertThat(dilution.waste().signum()).isNotNegative();
        }
        assertThat(one).isGreaterThan(100);
        assertThat(two).isGreaterThan(20);
    }

    @Test
    void withoutCarrierThereIsNoDilution() {
        assertThat(Dilution.of(wish(new BigDecimal("0.05"), "0.1"))).isEmpty();
    }

    /** The stated uncertainty against a seeded simulation of all weighings (200 000 runs, 1 % of the value). */
    @Test
    void statedUncertaintyAgreesWithSimulatedWeighings() {
        Dilution dilution = Dilution.of(wish(new BigDecimal("0.05"), "50")).orElseThrow();
        Random random = new Random(1925);
        double sum = 0;
        double squares = 0;
        int runs = 200_000;
        for (int run = 0; run < runs; run++) {
            double brings = dilution.portion().doubleValue() + noise(random);
            for (Dilution.Step step : dilution.steps()) {
                double concentrate = step.concentrate().doubleValue() + noise(random);
                brings *= concentrate / (concentrate + step.carrier().doubleValue() + noise(random));
            }
            sum += brings;
            squares += brings * brings;
        }
        double mean = sum / runs;
        double deviation = Math.sqrt(squares / runs - mean * mean);
        assertThat(dilution.deviation().doubleValue()).isCloseTo(deviation, offset(0.01 * deviation));
    }

    private static double noise(Random random) {
        return random.nextGaussian() * DEVIATION.doubleValue();
    }

    private static Dilution.Wish wish(BigDecimal wanted, String carrier) {
        return new Dilution.Wish(
                wanted, new BigDecimal(carrier), MINIMUM, STEP, DEVIATION, TOLERANCE, BigDecimal.valueOf(500));
    }
}
