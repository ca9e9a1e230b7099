package stillroom.formulary.imports;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillroom.formulary.material.StarterLibrary;

/** Which card a name in a sheet means; what is expected is common practice, no source. */
class NameIndexTest {
    private static final StarterLibrary LIBRARY = StarterLibrary.load();
    private static final NameIndex NAMES = NameIndex.of(LIBRARY, Map.of());

    @ParameterizedTest
    @CsvSource({
        "Aqua,water-purified",
        "Aqua / Water / Eau,water-purified",
        "Wasser (Aqua),water-purified",
        "dest. Wasser,water-purified",
        "Glycérine végétale,glycerin-99",
        "Glycerin 86 %,glycerin-86",
        "SLES 27 %,sles-27",
        "beurre de karité,shea-butter",
        "XANTHAN GUM,xanthan-gum",
        "Caprylic/Capric Triglyceride,caprylic-capric-triglyceride"
    })
    void theSameNameIsTaken(String name, String key) {
        Match match = NAMES.match(List.of(name), "");
        assertThat(match.materialKey()).contains(key);
        assertThat(match.isDoubtful()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"Xantham Gum,xanthan-gum", "Niacinamde,niacinamide", "Panthenol 50 %,panthenol-75"})
    void whatOnlyLooksAlikeIsShownToBeConfirmed(String name, String key) {
        Match match = NAMES.match(List.of(name), "");
        assertThat(match.isDoubtful()).isTrue();
        assertThat(match.materialKey().or(() -> match.others().stream().findFirst()))
                .isPresent();
        assertThat(java.util.stream.Stream.concat(match.materialKey().stream(), match.others().stream()))
                .contains(key);
    }

    @Test
    void namesThatDifferInOneWordOfWeightAreNotTheSame() {
        assertThat(NAMES.match(List.of("Sodium Lauryl Sulfate"), "").materialKey())
                .contains("sodium-lauryl-sulfate-powder");
        assertThat(NAMES.match(List.of("PEG-400 Hydrogenated Castor Oil"), "").materialKey())
                .isEmpty();
        assertThat(NAMES.match(List.of("Unobtainium"), "").kind()).isEqualTo(Match.Kind.NONE);
    }

    @Test
    void aCasNumberTellsWhatTheNameDoesNot() {
        assertThat(NAMES.match(List.of("white powder"), "57-13-6").materialKey())
                .contains("urea");
    }

    @Test
    void whatTheMakerDecidedGoesFirst() {
        NameIndex taught =
                NameIndex.of(LIBRARY, Map.of(NameIndex.form("House Blend"), "urea", NameIndex.form("Aqua"), ""));
        assertThat(taught.match(List.of("house  blend"), "").materialKey()).contains("urea");
        assertThat(taught.match(List.of("Aqua"), "").materialKey())
                .as("decided to mean no card")
                .isEmpty();
    }
}
