package stillroom.formulary.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillroom.formulary.batch.ExpectedDensity;
import stillroom.formulary.batch.MadeBook;
import stillroom.formulary.batch.MadeLot;
import stillroom.formulary.material.Strength.Basis;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.PercentRange;

/** A lot's certificate in place of the card's nominal figures; the betaine's figures are common practice, no source. */
class LotCardTest {
    private static final MaterialBook LIBRARY = StarterLibrary.load();

    private static Material betaine() {
        return LIBRARY.materials().stream()
                .filter(card -> card.strength().isPresent() && card.family() == Family.SURFACTANT)
                .filter(card -> card.strength().get().basis() == Basis.ACTIVE)
                .filter(card ->
                        card.composition().stream().anyMatch(c -> c.substance().equals("water")))
                .findFirst()
                .orElseThrow();
    }

    private static Lot lot(Material card, String code, String low, String high, Basis basis) {
        Strength strength = new Strength(
                PercentRange.of(low, high), basis, card.strength().orElseThrow().of());
        return new Lot(
                        code,
                        card.key(),
                        "",
                        "",
                        Grams.of("1000"),
                        LocalDate.of(2026, 1, 1),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Lot.State.RELEASED,
                        "")
                .with(
                        Optional.of(new Certificate(
                                Optional.of(strength), Optional.empty(), Optional.empty(), List.of(), "C-1")),
                        Optional.empty());
    }

    private static Lot certified(Material card, double pH, double density) {
        return lot(card, "C", "1", "1", Basis.ACTIVE)
                .with(
                        Optional.of(new Certificate(
                                Optional.empty(), Optional.of(pH), Optional.of(density), List.of(), "C-2")),
                        Optional.empty());
    }

    /** Citric acid's card: pH 1.7 to 2.2, 1.665 g/ml, both from memory. */
    @Test
    void aCertificateThatTheCardDoesNotLetExpectIsSaid() {
        Material acid = LIBRARY.material("citric-acid").orElseThrow();
        assertThat(CertificateCheck.of(acid, certified(acid, 2.0, 1.66))).isEmpty();
        assertThat(CertificateCheck.of(acid, certified(acid, 3.4, 1.2)))
                .hasSize(2)
                .anyMatch(says -> says.contains("pH 3.4, the card 1.7 to 2.2"))
                .anyMatch(says -> says.contains("1.2 g/ml, the card 1.665"));
        assertThat(CertificateCheck.of(acid, lot(acid, "C", "60", "60", Basis.AS_ANHYDROUS)))
                .containsExactly("The certificate says 60 %, the card 99.5 to 100 %.");
    }

    /** 100 g of 0.8 g/ml are 125 ml, 100 g of 1.25 g/ml are 80 ml: 200 g in 205 ml are 0.9756 g/ml (computed). */
    @Test
    void theExpectedDensityAddsVolumesOfTheLots() {
        Material acid = LIBRARY.material("citric-acid").orElseThrow();
        Grams g = Grams.of("100");
        List<MadeLot> made = List.of(
                new MadeLot(acid.key(), Optional.of("light"), g, g),
                new MadeLot(acid.key(), Optional.of("heavy"), g, g));
        List<Lot> lots = List.of(named(acid, "light", 0.8), named(acid, "heavy", 1.25));
        assertThat(ExpectedDensity.of(made, LIBRARY, lots).orElseThrow()).isEqualTo(0.9756, offset(0.0001));
        assertThat(ExpectedDensity.of(made, LIBRARY, List.of()).orElseThrow()).isEqualTo(1.665, offset(1e-9));
        assertThat(ExpectedDensity.of(List.of(new MadeLot("unknown", Optional.empty(), g, g)), LIBRARY, lots))
                .isEmpty();
    }

    private static Lot named(Material card, String code, double density) {
        return lot(card, code, "1", "1", Basis.ACTIVE)
                .with(
                        Optional.of(new Certificate(
                                Optional.empty(), Optional.empty(), Optional.of(density), List.of(), "")),
                        Optional.empty());
    }

    private static double whole(Material card) {
        return card.composition().stream()
                .mapToDouble(part -> part.massFraction().nominal())
                .sum();
    }

    private static double water(Material card) {
        return card.composition().stream()
                .filter(part -> part.substance().equals("water"))
                .mapToDouble(part -> part.massFraction().nominal())
                .sum();
    }

    @Test
    void theStrongerLotBringsMoreActiveAndLessWater() {
        Material card = betaine();
        double nominal = (card.strength().orElseThrow().percent().low().massFraction()
                        + card.strength().orElseThrow().percent().high().massFraction())
                / 2;
        String real = Double.toString(Math.round(nominal * 110 * 100) / 100.0);
        Lot lot = lot(card, "A", real, real, Basis.ACTIVE);
        LotCard as = LotCard.of(card, lot, LIBRARY);

        assertThat(as.reason()).isEmpty();
        assertThat(LotCard.factor(card, lot).orElseThrow()).isCloseTo(1.10, offset(0.002));
        assertThat(whole(as.card())).isCloseTo(1, offset(1e-9));
        assertThat(water(as.card())).isLessThan(water(card));
    }

    @Test
    void figuresOnAnotherBasisAreNeverMixed() {
        Material card = betaine();
        LotCard as = LotCard.of(card, lot(card, "A", "36", "36", Basis.DRY_RESIDUE), LIBRARY);

        assertThat(as.card()).isEqualTo(card);
        assertThat(as.reason()).contains("on another basis");
    }

    @Test
    void whatWouldBeMoreThanWholeIsSaidAndNotCounted() {
        Material card = betaine();
        LotCard as = LotCard.of(card, lot(card, "A", "100", "100", Basis.ACTIVE), LIBRARY);

        assertThat(as.card()).isEqualTo(card);
        assertThat(as.reason()).contains("more than whole");
    }

    @Test
    void severalLotsCountByTheirMass() {
        Material card = betaine();
        double nominal = (card.strength().orElseThrow().percent().low().massFraction()
                        + card.strength().orElseThrow().percent().high().massFraction())
                * 50;
        Lot weak = lot(card, "A", figure(nominal * 0.9), figure(nominal * 0.9), Basis.ACTIVE);
        Lot strong = lot(card, "B", figure(nominal * 1.1), figure(nominal * 1.1), Basis.ACTIVE);
        MadeBook book = MadeBook.of(
                List.of(
                        new MadeLot(card.key(), Optional.of("A"), Grams.of("30"), Grams.of("30")),
                        new MadeLot(card.key(), Optional.of("B"), Grams.of("10"), Grams.of("10"))),
                LIBRARY,
                List.of(weak, strong));

        // 3/4 of 0.9 and 1/4 of 1.1 times the card's strength.
        double ofWeak = water(LotCard.of(card, weak, LIBRARY).card());
        double ofStrong = water(LotCard.of(card, strong, LIBRARY).card());
        assertThat(water(book.book().material(card.key()).orElseThrow()))
                .isCloseTo(0.75 * ofWeak + 0.25 * ofStrong, offset(1e-9));
        assertThat(book.changed()).containsExactly(card.name());
    }

    private static String figure(double percent) {
        return new java.math.BigDecimal(percent)
                .setScale(4, java.math.RoundingMode.HALF_EVEN)
                .toPlainString();
    }
}
