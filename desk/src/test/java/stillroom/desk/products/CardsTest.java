package stillroom.desk.products;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.StarterLibrary;

final class CardsTest {
    private static final Cards CARDS = Cards.of(StarterLibrary.load());

    @ParameterizedTest
    @CsvSource({
        "GLYCERIN  86 %, glycerin-86",
        "sodium-benzoate, sodium-benzoate",
        "sodium benzoate, sodium-benzoate",
        "aqua, water-purified",
    })
    void aCardIsMeantByNameOrKey(String typed, String key) {
        assertThat(CARDS.key(typed)).contains(key);
    }

    @Test
    void everyCardIsFoundUnderTheNameThatIsShown() {
        assertThat(CARDS.all())
                .hasSizeGreaterThan(100)
                .allSatisfy(
                        card -> assertThat(CARDS.key(CARDS.name(card.key()))).contains(card.key()));
    }

    @Test
    void anInciNameOfSeveralGradesMeansNone() {
        assertThat(CARDS.key("Citric Acid")).as("anhydrous or monohydrate").isEmpty();
        assertThat(CARDS.key("Glycerin")).as("99 % or 86 %").isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"glicerin, glycerin", "benzoate sodium, sodium-benzoate", "potasium sorbat, potassium-sorbate"})
    void aSlipOfTheFingerStillFindsTheCard(String typed, String keyBegins) {
        assertThat(CARDS.similar(typed, 4)).extracting(Material::key).anyMatch(key -> key.startsWith(keyBegins));
    }

    @Test
    void whatBeginsAsTypedComesFirst() {
        assertThat(CARDS.similar("Glycerin", 2)).extracting(Material::key).allMatch(key -> key.startsWith("glycerin-"));
    }

    @Test
    void nonsenseFindsNothing() {
        assertThat(CARDS.similar("zzqx", 4)).isEmpty();
    }
}
