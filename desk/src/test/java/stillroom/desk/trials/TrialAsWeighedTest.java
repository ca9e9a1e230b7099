package stillroom.desk.trials;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.formulary.trial.TrialSet;

/** A run that was poured otherwise than planned is fitted as it was poured. */
class TrialAsWeighedTest {
    private static final double[] PER_LINE = {1000, 3000, 7000};

    @TempDir
    Path folder;

    private static String response(double[] fractions) {
        double sum = 0;
        for (int i = 0; i < fractions.length; i++) {
            sum += PER_LINE[i] * fractions[i];
        }
        return String.format(Locale.ROOT, "%.6f", sum);
    }

    @Test
    void anOverPouredRunMovesTheFit() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            ThreeLines lines = ThreeLines.on(desk);
            TrialSet set = lines.made(Map.of());
            assertThat(lines.enter(
                                    set,
                                    set.runs().stream()
                                            .map(run -> response(planned(run)))
                                            .toList())
                            .status())
                    .isEqualTo(303);
            String path = "/trials/" + set.key() + "/results";
            String water = "<th scope=\"row\">Water, purified</th><td class=\"number\">1000</td>";
            assertThat(desk.get(path).body())
                    .describedAs("as planned the responses lie on a plane")
                    .contains(water);
            double[] planned = planned(set.runs().get(0));
            lines.weigh(
                    set, set.runs().get(0), hundredths(planned[0]), hundredths(planned[1]) + 6, hundredths(planned[2]));
            assertThat(desk.get(path).body())
                    .describedAs("6 g too much glycerin in one beaker of 100 g: no plane any more")
                    .doesNotContain(water)
                    .contains("run " + set.runs().get(0).order() + ", as weighed");
        }
    }

    private static double hundredths(double fraction) {
        return Math.round(10_000 * fraction) / 100.0;
    }

    private static double[] planned(TrialSet.Run run) {
        return run.fractions().stream().mapToDouble(Double::doubleValue).toArray();
    }

    @Test
    void whatWasPouredIsFittedAndNotThePlan() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            ThreeLines lines = ThreeLines.on(desk);
            TrialSet set = lines.made(Map.of());
            TrialSet.Run poured = set.runs().get(0);
            double[] grams = new double[3];
            double sum = 0;
            for (int i = 0; i < 3; i++) {
                grams[i] = Math.round(100 * (100 * poured.fractions().get(i) + (i == 1 ? 6 : 0))) / 100.0;
                sum += grams[i];
            }
            lines.weigh(set, poured, grams);
            double[] asMade = {grams[0] / sum, grams[1] / sum, grams[2] / sum};

            List<String> responses = new ArrayList<>();
            for (TrialSet.Run run : set.runs()) {
                responses.add(response(run == poured ? asMade : planned(run)));
            }
            assertThat(lines.enter(set, responses).status()).isEqualTo(303);

            String page = desk.get("/trials/" + set.key()).body();
            assertThat(page)
                    .contains("figures as weighed")
                    .contains(String.format(Locale.ROOT, ">%.2f</td>", 100 * asMade[1]));
            String results = desk.get("/trials/" + set.key() + "/results").body();
            assertThat(results)
                    .describedAs(
                            "the responses lie on a plane over what was poured, so the plane is found without error")
                    .contains("<th scope=\"row\">Water, purified</th><td class=\"number\">1000</td>")
                    .contains("99.5 %</th><td class=\"number\">3000</td>")
                    .contains("<td class=\"number\">7000</td>")
                    .contains("run " + poured.order() + ", as weighed");
            assertThat(results.split("\\(as planned\\)", -1))
                    .describedAs("all runs but the weighed one are marked")
                    .hasSize(set.runs().size());
        }
    }
}
