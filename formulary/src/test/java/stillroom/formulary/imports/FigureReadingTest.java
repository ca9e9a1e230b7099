package stillroom.formulary.imports;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Amounts as they are written; common practice, no source. */
class FigureReadingTest {
    private static Figure read(String text) {
        return FigureReading.text(text, Optional.empty());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "5|5", "0.5|0.5", "0,5|0.5", "12,5 g|12.5", "12.5%|12.5", "1.234,5|1234.5", "1,234.5|1234.5",
                        "1 234,5|1234.5",
                "1'234.5|1234.5", ".5|0.5", "5*|5", "5 (1)|5", "0,250|0.25", "1,234,567|1234567", "5 % (10 g)|5",
                        "3 parts|3"
            })
    void aFigureIsRead(String text, String value) {
        Figure figure = read(text);
        assertThat(figure.kind()).isEqualTo(Figure.Kind.EXACT);
        assertThat(figure.middle()).isEqualByComparingTo(value);
        assertThat(figure.flags()).noneMatch(Flag::doubtful);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,250", "2.500", "~5", "ca. 3 %", "5²"})
    void aFigureThatMayMeanSomethingElseIsFlagged(String text) {
        assertThat(read(text).isNumber()).isTrue();
        assertThat(read(text).flags()).anyMatch(Flag::doubtful);
    }

    @Test
    void theMarkOfTheSheetDecidesThousands() {
        assertThat(FigureReading.text("1,250", Optional.of(Mark.POINT)).middle())
                .isEqualByComparingTo("1250");
        assertThat(FigureReading.text("1,250", Optional.of(Mark.COMMA)).middle())
                .isEqualByComparingTo("1.25");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"1-2 %|1.5", "0,5 – 1|0.75", "1 to 2|1.5", "2 bis 4 %|3", "<1|0.5", "max. 1 %|0.5", "up to 1 %|0.5"
            })
    void ofARangeTheMiddleIsTakenAndFlagged(String text, String middle) {
        assertThat(read(text).kind()).isEqualTo(Figure.Kind.RANGE);
        assertThat(read(text).middle()).isEqualByComparingTo(middle);
        assertThat(read(text).flags()).anyMatch(Flag::doubtful);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "q.s. to 100",
                "qs 100",
                "ad 100",
                "ad 100 %",
                "to 100",
                "up to 100%",
                "qsp 100",
                "qsp",
                "c.s.p. 100",
                "q.b. a 100",
                "balance",
                "rest",
                "Rest",
                "ad 100,00",
                "to 100.0",
                "q.s. ad 100 g"
            })
    void whatFillsUpIsRead(String text) {
        assertThat(read(text).kind()).isEqualTo(Figure.Kind.TO_WHOLE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"q.s.", "qs", "QS", "as needed", "nach Bedarf", "q.b.", "quantum satis", "c.s."})
    void whatIsAddedAsNeededIsRead(String text) {
        assertThat(read(text).kind()).isEqualTo(Figure.Kind.AS_NEEDED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"q.s. pH 5.5", "to pH 5,0", "q.s. (pH 5,5)", "pH 5.5", "0.2 (q.s. pH 5.5)"})
    void whatGoesToAPhIsRead(String text) {
        assertThat(read(text).kind()).isEqualTo(Figure.Kind.TO_READING);
    }

    @ParameterizedTest
    @ValueSource(strings = {"a pinch", "see note", "2 x 3", "1/2", "12.03.2025", "5 bottles", "1,2,3"})
    void whatIsNoAmountIsNotRead(String text) {
        assertThat(read(text).isAmount()).isFalse();
    }

    @Test
    void aVolumeIsKnownAsOne() {
        assertThat(read("3 drops").unit()).contains(Unit.VOLUME);
        assertThat(read("5 ml").unit()).contains(Unit.VOLUME);
    }
}
