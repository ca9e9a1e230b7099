package stillroom.formulary.judgement.pot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillroom.formulary.evaluation.Portion;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.Material;

class NaturalOriginPublishedTest {
    /** 50 % jojoba (1.0), 25 % coco-glucoside (0.8), 23 % water (1.0), 2 % preservative (0): 93 %. Source: liveclean.ca/iso-guidelines, read. */
    @Test
    void workedExample() {
        List<Item> items = List.of(
                item(0.50, Optional.of(1.0)),
                item(0.25, Optional.of(0.8)),
                item(0.23, Optional.of(1.0)),
                item(0.02, Optional.of(0.0)));
        assertThat(NaturalOrigin.of(items).orElseThrow().value()).isEqualTo(93.0, within(1e-9));
    }

    @Test
    void aMissingIndexMakesItUnknown() {
        assertThat(NaturalOrigin.of(List.of(item(0.5, Optional.of(1.0)), item(0.5, Optional.empty()))))
                .isEmpty();
    }

    private static Item item(double share, Optional<Double> index) {
        Material bare = Material.named("m", "m", Family.OTHER);
        Material card = new Material(
                "m",
                1,
                LocalDate.of(2026, 1, 1),
                "m",
                bare.family(),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "",
                Optional.empty(),
                List.of(),
                "",
                "",
                Optional.empty(),
                "",
                index,
                Map.of());
        return new Item(new Portion("l", "A", "m", MassFraction.exactly(share)), Optional.of(card));
    }
}
