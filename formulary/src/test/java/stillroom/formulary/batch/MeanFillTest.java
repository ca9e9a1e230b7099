package stillroom.formulary.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillroom.formulary.batch.MeanFill.Verdict;
import stillroom.formulary.quantity.Grams;

/** The mean of a filling beside the declared content. */
class MeanFillTest {
    private static MeanFill fill(String total, DeclaredContent declared, Optional<Double> density) {
        return MeanFill.of(
                new BatchEvent.Filled("Kettle", "jar", 10, Grams.of(total), Optional.empty(), ""), declared, density);
    }

    private static DeclaredContent content(String figure, boolean inMillilitres) {
        return new DeclaredContent(new BigDecimal(figure), inMillilitres);
    }

    /** Council Directive 76/211/EEC, annex I, 2.4 (table from memory): 9 % of 50 g, 4.5 g. */
    @Test
    void theTolerableErrorPartsShortFromBelow() {
        assertThat(fill("500", content("50", false), Optional.empty()).verdict())
                .isEqualTo(Verdict.FITS);
        assertThat(fill("499", content("50", false), Optional.empty()).verdict())
                .isEqualTo(Verdict.BELOW);
        assertThat(fill("455", content("50", false), Optional.empty()).verdict())
                .isEqualTo(Verdict.BELOW);
        MeanFill tooLittle = fill("454", content("50", false), Optional.empty());
        assertThat(tooLittle.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(tooLittle.says()).contains("50 g by 4.6 g", "tolerable error of 4.5 g");
        assertThat(tooLittle.verdict().asks()).isTrue();
    }

    /** Expected 1.30 g/ml: 60 g in 50 ml would be 1.20, as with some air; 54 g, 1.08, would be a sixth of air. */
    @Test
    void whatIsInItNarrowsDownWhichDensityIsLikely() {
        BatchEvent.Filled heavy = new BatchEvent.Filled("Kettle", "jar", 10, Grams.of("600"), Optional.empty(), "");
        BatchEvent.Filled light = new BatchEvent.Filled("Kettle", "jar", 10, Grams.of("540"), Optional.empty(), "");
        DeclaredContent jar = content("50", true);
        MeanFill likely = MeanFill.of(heavy, jar, Optional.empty(), Optional.of(1.3));
        assertThat(likely.verdict()).isEqualTo(Verdict.DENSITY_OPEN);
        assertThat(likely.says()).contains("one expects 1.30 g/ml");
        assertThat(MeanFill.of(light, jar, Optional.empty(), Optional.of(1.3)).verdict())
                .isEqualTo(Verdict.DENSITY_UNLIKELY);
        assertThat(MeanFill.of(light, jar, Optional.of(1.08), Optional.of(1.3)).verdict())
                .isEqualTo(Verdict.FITS);
    }

    @Test
    void sevenGramsMoreInFiftyAreClearlyOver() {
        MeanFill over = fill("570", content("50", true), Optional.of(1.0));
        assertThat(over.each()).isEqualTo(Grams.of("57"));
        assertThat(over.verdict()).isEqualTo(Verdict.OVER);
        assertThat(over.says()).contains("7 g more than the declared 50 ml");
        assertThat(fill("540", content("50", true), Optional.of(1.0)).verdict()).isEqualTo(Verdict.FITS);
    }

    @Test
    void aVolumeWithoutADensityIsHeldAgainstWhatIsLikely() {
        MeanFill unlikely = fill("570", content("50", true), Optional.empty());
        assertThat(unlikely.verdict()).isEqualTo(Verdict.DENSITY_UNLIKELY);
        assertThat(unlikely.says()).contains("1.14 g/ml", "unlikely");
        assertThat(fill("510", content("50", true), Optional.empty()).verdict()).isEqualTo(Verdict.DENSITY_OPEN);
        // a dense paste is right once its density was read
        assertThat(fill("570", content("50", true), Optional.of(1.14)).verdict())
                .isEqualTo(Verdict.FITS);
    }

    @Test
    void outsideTheTableOfTheLawItStillAnswers() {
        assertThat(fill("36", content("4", false), Optional.empty()).verdict()).isEqualTo(Verdict.SHORT);
        assertThat(fill("37", content("4", false), Optional.empty()).verdict()).isEqualTo(Verdict.BELOW);
        assertThat(fill("110000", content("10500", false), Optional.empty()).verdict())
                .isEqualTo(Verdict.FITS);
    }
}
