package stillroom.desk.trials;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class AxesTest {
    private static List<String> labels(List<Axes.Tick> ticks) {
        return ticks.stream().map(Axes.Tick::label).toList();
    }

    @Test
    void ticksStandAtRoundFigures() {
        Axes axes = Axes.plain(1.5, 4.5, 0, 6440);
        assertThat(labels(axes.up())).containsExactly("0", "2000", "4000", "6000");
        assertThat(labels(axes.across())).containsExactly("2", "3", "4");
        assertThat(labels(Axes.plain(0.12, 0.31, -3, 4).up())).containsExactly("\u22122", "0", "2", "4");
        assertThat(Axes.round(26, 33.12, 5)).containsExactly(26.0, 28.0, 30.0, 32.0);
    }

    @Test
    void logarithmicOnesStandAtPowersOfTen() {
        assertThat(labels(new Axes(-1, 3, -0.7, 1.9, true).across())).containsExactly("0.1", "1", "10", "100", "1000");
        assertThat(labels(new Axes(0, 1, 0, 1, true).across())).containsExactly("1", "2", "5", "10");
    }

    @Test
    void figuresHaveFourDigitsAlsoWhereTheyRoundUp() {
        assertThat(Words.figure(999.99999)).isEqualTo("1000");
        assertThat(Words.figure(-99.996)).isEqualTo("\u2212100.0");
        assertThat(Words.figure(0.0123456)).isEqualTo("0.01235");
    }

    @Test
    void aFlatPictureHasRoom() {
        assertThat(Axes.plain(50, 50 + 1e-14, 1e6, 1e6 + 1e-9).up()).hasSizeBetween(2, 6);
        Axes flat = Axes.plain(1, 2, 5, 5);
        assertThat(Double.parseDouble(flat.y(5))).isCloseTo(123.5, Offset.offset(0.6));
    }
}
