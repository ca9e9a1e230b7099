package stillroom.formulary.judgement.pot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import stillroom.formulary.evaluation.Composition;
import stillroom.formulary.evaluation.SubstanceShare;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.judgement.Bench;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.MassFraction;

/** A premix of a premix of a surfactant that is sold as 27 to 31 %: each range multiplies through, by hand. */
class PremixRangesTest {
    @Test
    void rangesMultiplyThroughPremixesOfPremixes() {
        Bench book = Bench.book();
        book.card(
                "supplied",
                Family.SURFACTANT,
                new Constituent(
                        "sodium-laureth-sulfate", new MassFraction(0.27, 0.29, 0.31), Constituent.Role.INGREDIENT),
                new Constituent("water", new MassFraction(0.69, 0.71, 0.73), Constituent.Role.INGREDIENT));
        book.card(
                "inner",
                Family.OTHER,
                Constituent.exactly("material:supplied", 0.5),
                Constituent.exactly("glycerin", 0.5));
        book.card(
                "outer",
                Family.OTHER,
                new Constituent("material:inner", new MassFraction(0.38, 0.4, 0.42), Constituent.Role.INGREDIENT),
                Constituent.exactly("water", 0.6));
        Composition opened = Opening.open(
                        Subjects.of(Bench.formula("water", "q.s.", "outer", "20"), Brief.of(ProductType.HAND_WASH)),
                        book)
                .composition();
        SubstanceShare active = opened.share("sodium-laureth-sulfate").orElseThrow();
        assertThat(active.inThePot().lower()).isEqualTo(0.2 * 0.38 * 0.5 * 0.27, within(1e-12));
        assertThat(active.inThePot().nominal()).isEqualTo(0.2 * 0.4 * 0.5 * 0.29, within(1e-12));
        assertThat(active.inThePot().upper()).isEqualTo(0.2 * 0.42 * 0.5 * 0.31, within(1e-12));
        assertThat(active.lines()).containsExactly("line2");
        double all = opened.shares().stream()
                .mapToDouble(share -> share.inThePot().nominal())
                .sum();
        assertThat(all).isEqualTo(1, within(1e-9));
    }

    @Test
    void aRingOfThreeIsRefusedByItsChain() {
        Bench book = Bench.book();
        book.card("a", Family.OTHER, Constituent.exactly("material:b", 1));
        book.card("b", Family.OTHER, Constituent.exactly("material:c", 1));
        book.card("c", Family.OTHER, Constituent.exactly("material:a", 1));
        Opening.Opened opened = Opening.open(
                Subjects.of(Bench.formula("water", "q.s.", "a", "20"), Brief.of(ProductType.HAND_WASH)), book);
        assertThat(opened.loops()).containsExactly("a → b → c → a");
        assertThat(opened.composition().unknownFraction()).isEqualTo(0.2, within(1e-12));
    }
}
