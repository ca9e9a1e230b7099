package stillroom.formulary.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.quantity.Interval;

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

    /** Its acid groups take up base by an amount that depends on how far it was neutralised. */
    @Test
    void aThickenerWithAcidGroupsMakesThePhUnknownInPlainWords() {
        book.pure("poly", Family.THICKENER, Bench.UNKNOWN, "carbomer-like");
        assertThat(why(book.judge(ProductType.TONER, "water", "q.s.", "citric-acid", "0.3", "poly", "0.3")))
                .isEqualTo("poly itself takes up acid or base, and how much stands on no card");
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

    /** Lactic acid of 76 to 92 %: the card's range decides the interval, and the interval says so. */
    @Test
    void theRangeThatWidensMostIsNamed() {
        book.pure("lactic-acid", Family.ACID, 90.078);
        book.card(
                "lactic-acid-84",
                Family.ACID,
                new Constituent("lactic-acid", new MassFraction(0.50, 0.84, 0.92), Constituent.Role.INGREDIENT),
                Constituent.exactly("water", 0.16));
        Figure ph =
                ph(book.judge(ProductType.TONER, "water", "q.s.", "sodium-benzoate", "0.5", "lactic-acid-84", "0.3"));
        assertThat(ph.method()).contains("the range of lactic-acid");
        assertThat(ph.high() - ph.low()).isGreaterThan(0.5);
    }

    /** A material with a pH of its own and no constants may pull; the middle stays, the interval opens and names it. */
    @Test
    void aMaterialOfWhichOnlyTheOwnPhIsKnownWidensTheInterval() {
        Figure plain =
                ph(book.judge(ProductType.TONER, "water", "q.s.", "sodium-benzoate", "0.2", "citric-acid", "0.05"));
        book.card("extract", Family.ACTIVE, Constituent.exactly("glycerin", 1));
        book.ownPh("extract", new Interval(7, 8));
        Figure pulled = ph(book.judge(
                ProductType.TONER, "water", "q.s.", "sodium-benzoate", "0.2", "citric-acid", "0.05", "extract", "10"));
        assertThat(pulled.method()).contains("the buffering of extract");
        assertThat(pulled.high() - pulled.value()).isGreaterThan(plain.high() - plain.value() + 0.1);
    }
}
