package stillroom.formulary.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.formula.ProductType;

class AcidityTest {
    private final Bench book = Bench.book();

    private static Figure ph(Evaluation evaluation) {
        return evaluation.figures().ph().match(figure -> figure, because -> {
            throw new AssertionError(because);
        });
    }

    private static String why(Evaluation evaluation) {
        return evaluation.figures().ph().match(figure -> "known: " + figure.value(), because -> because);
    }

    /** 0.5 % sodium benzoate + 0.3 % citric acid: pH 4.074 by an independent Davies solver, its own frozen figure. */
    @Test
    void benzoateWithCitricAcid() {
        Figure ph = ph(book.judge(ProductType.TONER, "water", "q.s.", "sodium-benzoate", "0.5", "citric-acid", "0.3"));
        assertThat(ph.value()).isEqualTo(4.074, within(0.01));
        assertThat(ph.high() - ph.low()).isGreaterThanOrEqualTo(0.24);
    }

    @Test
    void sodiumChlorideAloneSetsNoPh() {
        assertThat(why(book.judge(ProductType.TONER, "water", "q.s.", "sodium-chloride", "1")))
                .contains("weakly");
    }

    @Test
    void withoutWaterThereIsNoPh() {
        assertThat(why(book.judge(ProductType.BALM, "helianthus-annuus-seed-oil", "100")))
                .startsWith("no pH");
    }

    @Test
    void unknownCompositionMakesThePhUnknown() {
        assertThat(why(book.judge(ProductType.TONER, "water", "q.s.", "citric-acid", "0.3", "unheard-of", "2")))
                .contains("unheard-of");
    }

    @Test
    void glycerinWidensTheInterval() {
        Figure plain =
                ph(book.judge(ProductType.TONER, "water", "q.s.", "sodium-benzoate", "0.5", "citric-acid", "0.3"));
        Figure rich = ph(book.judge(
                ProductType.TONER, "water", "q.s.", "sodium-benzoate", "0.5", "citric-acid", "0.3", "glycerin", "30"));
        assertThat(rich.high() - rich.low()).isGreaterThan(plain.high() - plain.low() + 0.5);
    }
}
