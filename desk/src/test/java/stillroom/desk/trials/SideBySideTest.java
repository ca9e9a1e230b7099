package stillroom.desk.trials;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.formulary.trial.TrialSet;

/** Versions and trials beside each other. */
class SideBySideTest {
    @TempDir
    Path folder;

    @Test
    void theBaseAndTwoRunsStandBesideEachOtherWithWhatWasRead() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            ThreeLines lines = ThreeLines.on(desk);
            TrialSet set = lines.made(Map.of());
            lines.weigh(set, set.runs().get(0), 40, 50, 10);
            String address =
                    "/side-by-side?of=" + lines.product() + ".1&of=" + set.product() + ".1&of=" + set.product() + ".2";
            OpenDesk.Answer answer = desk.get(address);
            assertThat(answer.status()).isEqualTo(200);
            assertThat(answer.body())
                    .contains(
                            "Three lines, version 1",
                            "three, run " + set.runs().get(1).order())
                    .contains("Material cost of 100 g", "Batch T-1", "Aqua", "differs")
                    .containsPattern("Glycerin, vegetable[^<]*<span class=\"soft small\"> differs</span></th>"
                            + "<td role=\"cell\" class=\"number\" data-label=\"Three lines, version 1\">25.00</td>");
            assertThat(desk.get("/trials/" + set.key()).body())
                    .contains("/side-by-side?of=" + lines.product() + ".1&amp;of=");
            assertThat(desk.get("/side-by-side?of=9.9").status()).isEqualTo(404);
            assertThat(desk.get("/side-by-side?of=x").status()).isEqualTo(404);
            assertThat(desk.get("/side-by-side").body())
                    .contains("Choose a version, or a run of trials, to begin with.");
        }
    }
}
