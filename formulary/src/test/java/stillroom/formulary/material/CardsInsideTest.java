package stillroom.formulary.material;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import stillroom.formulary.judgement.Bench;

class CardsInsideTest {
    private static Bench book() {
        Bench book = Bench.book();
        book.card("salt", Family.OTHER, Constituent.exactly("sodium-chloride", 1));
        book.card("b", Family.OTHER, Constituent.exactly("material:salt", 0.2), Constituent.exactly("material:c", 0.8));
        book.card("c", Family.OTHER, Constituent.exactly("material:a", 0.5), Constituent.exactly("water", 0.5));
        return book;
    }

    @Test
    void theChainBackToTheCardIsNamed() {
        Material asked = Material.named("a", "A", Family.OTHER)
                .withComposition(Constituent.exactly("material:salt", 0.1), Constituent.exactly("material:b", 0.9));
        assertThat(CardsInside.loop(asked, book())).containsExactly("a", "b", "c", "a");
    }

    @Test
    void theSameCardTwiceOnTwoWaysIsNoLoop() {
        Material asked = Material.named("d", "D", Family.OTHER)
                .withComposition(Constituent.exactly("material:salt", 0.1), Constituent.exactly("material:b", 0.9));
        assertThat(CardsInside.loop(asked, book())).isEmpty();
    }

    @Test
    void whoHoldsACardIsFoundThroughOthers() {
        assertThat(CardsInside.holding("salt", book())).contains("b").doesNotContain("c", "salt");
        assertThat(CardsInside.holding("c", book())).containsExactly("b");
        assertThat(CardsInside.holding("a", book())).containsExactlyInAnyOrder("b", "c");
    }
}
