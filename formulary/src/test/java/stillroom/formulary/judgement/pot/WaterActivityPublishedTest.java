package stillroom.formulary.judgement.pot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillroom.formulary.rule.RuleBook;
import stillroom.formulary.rule.RuleTables;

/**
 * Norrish's equation with the constants of the table. K of glycerol 1.16, xylitol 1.66, sorbitol 1.65: PMC2836749,
 * table 3, read; the others from memory. Expected figures recomputed from the equation to four decimals.
 */
class WaterActivityPublishedTest {
    private static final RuleBook RULES = RuleTables.standard();

    @ParameterizedTest
    @CsvSource({
        "glycerin, 92.094, 10, 0.9782",
        "glycerin, 92.094, 30, 0.9163",
        "glycerin, 92.094, 50, 0.8108",
        "propylene-glycol, 76.095, 20, 0.9412",
        "sorbitol, 182.172, 40, 0.9322",
        "xylitol, 152.146, 30, 0.9480",
        "sucrose, 342.297, 60, 0.8953",
        "glucose, 180.156, 40, 0.9293"
    })
    void tabledActivities(String solute, double molarMass, double percent, double expected) {
        double k = Objects.requireNonNull(RULES.norrish().get(solute));
        assertThat(WaterActivity.ofOne(100 - percent, percent, molarMass, k)).isEqualTo(expected, within(5e-5));
    }

    /** Measured: sucrose 60 % 0.896 to 0.900, glycerol 50 % 0.80 to 0.82, from memory. */
    @ParameterizedTest
    @CsvSource({"sucrose, 342.297, 60, 0.896, 0.900", "glycerin, 92.094, 50, 0.80, 0.82"})
    void nearMeasuredActivities(String solute, double molarMass, double percent, double low, double high) {
        double k = Objects.requireNonNull(RULES.norrish().get(solute));
        assertThat(WaterActivity.ofOne(100 - percent, percent, molarMass, k)).isBetween(low - 0.005, high + 0.005);
    }
}
