package stillroom.desk.chemistry;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.formulary.quantity.Interval;

class SurfacePageTest {
    @TempDir
    Path folder;

    /** For HLB 10 from polysorbate 60 (14.9) and sorbitan stearate (4.7): 52.0 and 48.0 %, recomputed by Griffin's way. */
    @Test
    void aPairIsSolvedAndNothingIsExtrapolated() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            String path = PreservingPageTest.version(
                    desk,
                    Optional.of(new Interval(5, 5.5)),
                    "water-purified",
                    "q.s.",
                    "sunflower-oil",
                    "20",
                    "polysorbate-60",
                    "2",
                    "sorbitan-stearate",
                    "2");
            String pair = path + "/emulsion?first=polysorbate-60&second=sorbitan-stearate&asked=";
            assertThat(desk.get(pair + "10").body())
                    .contains("52.0 % Polysorbate 60 and 48.0 % Sorbitan Stearate")
                    .contains("a row of beakers");
            assertThat(desk.get(pair + "16").body()).contains("outside the pair, and nothing is extrapolated");
            // The sunflower oil asks for 7: (7 - 4.7) / (14.9 - 4.7) = 22.5 %.
            assertThat(desk.get(pair).body()).contains("22.5 % Polysorbate 60");
            assertThat(desk.get(pair + "abc").body()).contains("is not a number that can be read");
        }
    }

    @Test
    void whereHlbDoesNotApplyItSaysSoAndTheChargeStands() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            String path = PreservingPageTest.version(
                    desk,
                    Optional.of(new Interval(5, 5.5)),
                    "water-purified",
                    "q.s.",
                    "sles-70",
                    "10",
                    "cocamidopropyl-betaine-30",
                    "10");
            String page = desk.get(path + "/emulsion").body();
            assertThat(page)
                    .contains("does not apply: of Sodium Laureth Sulfate, it is ionic")
                    .contains("salts and other small ions are not counted")
                    .contains("weak groups by effective constants at the product")
                    .contains("Not known: no recorded source supports reckoning mildness");
        }
    }
}
