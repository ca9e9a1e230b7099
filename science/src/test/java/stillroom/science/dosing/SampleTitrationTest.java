package stillroom.science.dosing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The prescription keeps its promises. */
class SampleTitrationTest {
    private static final Instrument METER = Instrument.meter(0.02, 0.01);

    @Test
    void expectedDoseIsAtLeastFiftyBalanceSteps() {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 50; i++) {
            HiddenLiquid liquid = HiddenLiquid.next(random);
            Prescription prescription = SampleTitration.prescribe(
                            KnownChemistry.none(liquid.water),
                            liquid.startPh,
                            liquid.targetPh,
                            liquid.corrector,
                            2000,
                            METER)
                    .orElseThrow();
            assertThat(prescription.expectedGrams() / METER.balanceStepGrams())
                    .isGreaterThanOrEqualTo(SampleTitration.LEAST_STEPS);
            assertThat(prescription.sampleGrams()).isEqualTo(100);
            assertThat(prescription.firstGrams()).isLessThan(0.1 * prescription.expectedGrams() + 0.01);
        }
    }

    /** One drop (0.04 g) of citric acid 50 % moves 50 g of weakly buffered liquid by 0.8 pH or more: own computation. */
    @Test
    void weaklyBufferedLiquidsGetADilution() {
        Prescription prescription = SampleTitration.prescribe(
                        KnownChemistry.none(0.9), 7, 5.5, HiddenLiquid.CITRIC_50, 1000, METER)
                .orElseThrow();
        assertThat(prescription.dilutionMassFraction()).isLessThanOrEqualTo(0.2);
    }

    @Test
    void dilutionKeepsTheEquivalents() {
        Corrector dilute = HiddenLiquid.CITRIC_50.dilutedTo(0.1);
        assertThat(dilute.components().get(0).molPerKg() * 10)
                .isCloseTo(
                        HiddenLiquid.CITRIC_50.components().get(0).molPerKg(),
                        org.assertj.core.api.Assertions.within(1e-12));
        assertThat(dilute.waterMassFraction()).isEqualTo(0.95);
    }

    @Test
    void smallBulksKeepMoreThanHalf() {
        Prescription prescription = SampleTitration.prescribe(
                        KnownChemistry.none(0.9), 7, 5.5, HiddenLiquid.CITRIC_50, 30, METER)
                .orElseThrow();
        assertThat(prescription.sampleGrams()).isEqualTo(15);
    }

    @Test
    void anAcidCannotRaiseAPh() {
        assertThat(SampleTitration.prescribe(KnownChemistry.none(0.9), 5, 7, HiddenLiquid.CITRIC_50, 500, METER))
                .isEmpty();
    }
}
