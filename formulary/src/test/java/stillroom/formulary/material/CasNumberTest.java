package stillroom.formulary.material;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CasNumberTest {
    /** Registry numbers of water, glycerin, caffeine and sodium chloride (from memory). */
    @ParameterizedTest
    @ValueSource(strings = {"7732-18-5", "56-81-5", "58-08-2", "7647-14-5"})
    void givenNumbersAreSound(String number) {
        assertThat(CasNumber.isSound(number)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"7732-18-4", "56-18-5", "056-81-5", "56815", "", "1-00-1", "56-81-5 ", "٥٦-٨١-٥"})
    void otherTextsAreNot(String text) {
        assertThat(CasNumber.isSound(text)).isFalse();
    }

    @Test
    void everyNumberOfTheStarterLibraryIsSound() {
        assertThat(StarterLibrary.load().substances())
                .flatExtracting(Substance::casNumbers)
                .hasSizeGreaterThan(100)
                .allMatch(CasNumber::isSound);
    }
}
