package stillroom.science.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A titration as a textbook works it: 100.0 ml of 0.100 M acetic acid with 0.100 M sodium hydroxide, Ka 1.8e-5, without
 * activity coefficients. Source: Whitten, Davis, Peck, Stanley, General Chemistry, Table 19-6 (read in a stored public
 * copy). The table rounds to 0.01, and drops small terms of the equilibrium.
 */
class TitrationPublishedTest {
    /** The same solver without activity: A = 0, and pKw 14 as the textbook takes it. */
    private static final WaterModel IDEAL = new WaterModel(0, 0, Dissociation.of(14));

    private static final double MILLILITRES = 100;

    private static Equilibrium after(double baseMillilitres, WaterModel model) {
        double litres = (MILLILITRES + baseMillilitres) / 1000;
        AcidBase acetic = AcidBase.of("acetic-acid", 0, -Math.log10(1.8e-5));
        return new EquilibriumSolver(model)
                .solve(new Solution(
                        List.of(new Component(acetic, 0.1 * MILLILITRES / 1000 / litres)),
                        List.of(new StrongIon("sodium", 1, 0.1 * baseMillilitres / 1000 / litres)),
                        25,
                        Optional.empty()));
    }

    @ParameterizedTest
    @CsvSource({
        "0.0, 2.89",
        "20.0, 4.14",
        "50.0, 4.74",
        "75.0, 5.22",
        "90.0, 5.70",
        "95.0, 6.02",
        "99.0, 6.74",
        "100.0, 8.72",
        "101.0, 10.70",
        "110.0, 11.68",
        "120.0, 11.96"
    })
    void followsTheTableOfTheTextbook(double baseMillilitres, double publishedPh) {
        assertThat(after(baseMillilitres, IDEAL).pH()).isCloseTo(publishedPh, within(0.015));
    }

    @Test
    void activityMovesTheMiddleOfTheBufferedRegionDown() {
        double ideal = after(50, IDEAL).pH();
        double real = after(50, WaterModel.STANDARD).pH();
        // At I = 0.033 Davies gives log g = -0.074: the acetate buffer reads lower by as much.
        assertThat(ideal - real).isBetween(0.05, 0.10);
    }
}
