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
