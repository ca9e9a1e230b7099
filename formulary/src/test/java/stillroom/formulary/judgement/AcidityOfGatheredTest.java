package stillroom.formulary.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import stillroom.formulary.constants.EffectiveConstant;
import stillroom.formulary.constants.EffectiveConstantsFile;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.StarterLibrary;

/** pH of what holds polyacids and weak-acid surfactants: the interval has to hold what is published. */
class AcidityOfGatheredTest {
    private static final MaterialBook LIBRARY = StarterLibrary.load();

    private static Evaluation judge(String... pairs) {
        return Bench.EVALUATOR.evaluate(
                Subjects.of(Bench.formula(pairs), Brief.of(ProductType.TONER)), LIBRARY, Bench.TODAY);
    }

    private static Figure ph(String... pairs) {
        return judge(pairs).figures().ph().match(figure -> figure, because -> {
            throw new AssertionError(because);
        });
    }

    private static String why(String... pairs) {
        return judge(pairs).figures().ph().match(figure -> "known: " + figure, because -> because);
    }

    /** A 0.5 % dispersion has a pH of 2.5 to 3.5: maker's data sheets in public copies, read. */
    @Test
    void carbomerInPlainWater() {
        Figure ph = ph("water-purified", "q.s.", "carbomer", "0.5");
        assertThat(ph.value()).isBetween(2.5, 3.5);
        assertThat(ph.low()).isLessThan(ph.value());
    }

    /** About 0.42 parts of sodium hydroxide to one part of carbomer give pH 7: data sheets, from memory. */
    @Test
    void carbomerNeutralised() {
        Figure ph = ph("water-purified", "q.s.", "carbomer", "0.5", "sodium-hydroxide-10", "2.1");
        assertThat(ph.low()).isLessThan(7.0);
        assertThat(ph.high()).isGreaterThan(7.0);
        assertThat(ph.method()).contains("Carbomer by effective constants");
    }

    /** The base that a gel takes up moves its pH upwards all along. */
    @Test
    void moreBaseMoreAlkaline() {
        double before = 0;
        for (String base : new String[] {"0.2", "0.8", "1.4", "2"}) {
            double now = ph("water-purified", "q.s.", "carbomer", "0.5", "sodium-hydroxide-10", base)
                    .value();
            assertThat(now).isGreaterThan(before);
            before = now;
        }
    }

    @Test
    void aHalfNeutralisedPolyacidStaysUnknown() {
        assertThat(why("water-purified", "q.s.", "sodium-polyacrylate", "0.5", "citric-acid", "0.1"))
                .contains("itself takes up acid or base");
    }

    /** A sarcosinate sold at pH 7.5 to 8.5 stays near that without acid, and buffers where its constant lies. */
    @Test
    void sarcosinateBuffersTheAcid() {
        Figure acidified = ph("water-purified", "q.s.", "sodium-lauroyl-sarcosinate-30", "20", "citric-acid", "0.6");
        assertThat(acidified.low()).isBetween(3.0, 5.5);
        assertThat(acidified.high()).isBetween(5.0, 7.5);
        // The same acid in water alone, with a benzoate as only base, ends well below.
        double plain = ph("water-purified", "q.s.", "sodium-benzoate", "0.1", "citric-acid", "0.6")
                .value();
        assertThat(plain).isLessThan(acidified.low());
    }

    /** An amidoamine needs about its own moles of acid to come to pH 4 to 5: common practice, no source. */
    @Test
    void amidoamineNeutralisedWithLacticAcid() {
        Figure ph = ph("water-purified", "q.s.", "stearamidopropyl-dimethylamine", "1.5", "lactic-acid-80", "0.55");
        assertThat(ph.low()).isLessThan(5.0);
        assertThat(ph.high()).isGreaterThan(4.0);
    }

    /** Soap stays out. */
    @Test
    void soapStaysUnknown() {
        assertThat(why("water-purified", "q.s.", "soap-potassium-40", "30")).contains("gathers into micelles");
    }

    /** Half the groups are charged at the middle constant, for a polymer too, since its slices lie evenly. */
    @Test
    void meanChargeAtTheMiddleConstant() {
        EffectiveConstant carbomer = constant("carbomer");
        assertThat(carbomer.meanCharge(5.85, 0.5)).isEqualTo(-0.5, within(1e-9));
        assertThat(carbomer.meanCharge(3, 0.5)).isGreaterThan(-0.05);
        EffectiveConstant betaine = constant("cocamidopropyl-betaine");
        assertThat(betaine.meanCharge(5.5, 0.5)).isEqualTo(0, within(0.01));
        assertThat(betaine.meanCharge(2.4, 0.5)).isEqualTo(0.5, within(1e-9));
    }

    private static EffectiveConstant constant(String key) {
        return Objects.requireNonNull(EffectiveConstantsFile.shipped().get(key));
    }
}
