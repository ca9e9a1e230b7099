package stillroom.science.equilibrium;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

/** Numbers that cannot be meant are refused with their name, value and unit. */
class InputTest {
    @Test
    void refusesNonsense() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Solution.water(25).with(Acids.CITRIC, -0.1))
                .withMessageContaining("citric")
                .withMessageContaining("mol/kg");
        assertThatIllegalArgumentException().isThrownBy(() -> Solution.water(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> AcidBase.of("nothing", 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Dissociation.of(99))
                .withMessageContaining("pKa");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DissolvedGas(Acids.AMMONIUM, 1, 0, 1))
                .withMessageContaining("uncharged");
    }
}
