package stillroom.desk.trials;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.formulary.trial.ViscosityCurve;

/** Curves kept with a product; readings taken in another way are named and left out. */
class KeptCurveTest {
    private static final String RISING = "1 900\n1.5 2100\n2 3900\n2.5 5600";
    private static final String FALLING = "3 6100\n3.5 5200\n4 3500";

    @TempDir
    Path folder;

    private OpenDesk desk;
    private long product;

    @BeforeEach
    void open() {
        desk = OpenDesk.in(folder);
        product = ThreeLines.on(desk).product();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private static Map<String, String> readings(String readings, Map<String, String> other) {
        Map<String, String> form = new HashMap<>(Map.of(
                "instrument",
                "rotational",
                "geometry",
                "DISC_SPINDLE",
                "spindle",
                "R4",
                "speed",
                "20",
                "container",
                "250 ml",
                "celsius",
                "25",
                "age",
                "24",
                "readings",
                readings));
        form.putAll(other);
        return form;
    }

    private Map<String, String> kept(String readings, Map<String, String> other) {
        Map<String, String> form = readings(readings, Map.of("against", "DOSE", "name", "Salt in summer"));
        form.put("product", "" + product);
        form.putAll(other);
        return form;
    }

    private ViscosityCurve stored() {
        List<ViscosityCurve> all =
                desk.ledger().drawer("viscosity-curve", ViscosityCurve.class).list();
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    @Test
    void aKeptCurveIsShownAgainAndReadingsInTheSameWayJoinIt() {
        OpenDesk.Answer answer = desk.post("/trials/curves", kept(RISING, Map.of("wanted", "3000")));
        assertThat(answer.status()).isEqualTo(303);
        assertThat(desk.get(answer.location()).body()).contains("Salt in summer", "Five readings at four different");
        assertThat(desk.get("/trials").body()).contains("Salt in summer", "/trials/curves/v0001");
        long product = desk.ledger().products().products().get(0).id();
        assertThat(desk.get("/products/" + product).body())
                .contains("/trials/curves/v0001", "viscosity against salt or thickener");
        assertThat(desk.post("/trials/curves/v0001", readings(FALLING, Map.of("count", "1", "celsius", "25.3")))
                        .status())
                .isEqualTo(303);
        assertThat(desk.get("/trials/curves/v0001").body())
                .contains("peak at a total of", "For 3000", "<polyline")
                .doesNotContain("Left out");
    }

    @Test
    void anotherViscosityIsAskedOfAKeptCurve() {
        desk.post("/trials/curves", kept(RISING + "\n" + FALLING, Map.of("wanted", "3000")));
        assertThat(desk.get("/trials/curves/v0001").body()).contains("For 3000 mPa s: a total of", "value=\"3000\"");
        assertThat(desk.get("/trials/curves/v0001?wanted=4000").body()).contains("For 4000 mPa s: a total of");
        assertThat(desk.get("/trials/curves/v0001?wanted=40000").body())
                .contains("40000 mPa s is not reached on the safe side");
        assertThat(desk.get("/trials/curves/v0001?wanted=1").body())
                .describedAs("thinner than without any salt is not said to be out of reach above")
                .contains("For 1.000 mPa s none is to be added: without any");
        OpenDesk.Answer two = desk.get("/trials/curves/v0001?wanted=4,000");
        assertThat(two.status()).isEqualTo(422);
        assertThat(two.body()).contains("4,000 may mean 4000 or 4.0");
        assertThat(stored().wanted()).contains(3000.0);
    }

    @Test
    void readingsTakenInAnotherWayAreLeftOutAndTheDifferenceIsSaid() {
        desk.post("/trials/curves", kept(RISING + "\n" + FALLING, Map.of()));
        String peak = row(desk.get("/trials/curves/v0001").body());
        desk.post(
                "/trials/curves/v0001",
                readings("1 90\n2 80\n3 70\n4 60\n5 50", Map.of("count", "1", "celsius", "40", "spindle", "R2")));
        String page = desk.get("/trials/curves/v0001").body();
        assertThat(page).contains("Left out: differs in spindle, temperature.");
        assertThat(row(page)).isEqualTo(peak);
        assertThat(desk.get("/trials/curves/v0001?as=2").body())
                .describedAs("the other readings can be looked at by themselves")
                .contains("Left out: differs in spindle, temperature.")
                .doesNotContain(peak);
    }

    private static String row(String page) {
        int at = page.indexOf("peak at a total of");
        assertThat(at).isPositive();
        return page.substring(at, page.indexOf("</tr>", at));
    }

    @Test
    void aLateFormAnswersWithWhatWasTypedAndChangesNothing() {
        desk.post("/trials/curves", kept(RISING, Map.of()));
        desk.post("/trials/curves/v0001", readings(FALLING, Map.of("count", "1")));
        OpenDesk.Answer late = desk.post("/trials/curves/v0001", readings("9 123", Map.of("count", "1")));
        assertThat(late.status()).isEqualTo(409);
        assertThat(late.body()).contains("changed elsewhere meanwhile", "9 123");
        assertThat(stored().series()).hasSize(2);
        assertThat(desk.post("/trials/curves/v0001/out", Map.of("count", "2", "series", "2"))
                        .status())
                .isEqualTo(303);
        assertThat(stored().series()).hasSize(1);
    }

    @Test
    void whatIsMissingIsSaidAndNothingIsKept() {
        OpenDesk.Answer answer = desk.post("/trials/curves", kept("1 x", Map.of("speed", "", "name", "", "age", "")));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body())
                .contains(
                        "The name of the curve is missing.",
                        "The speed is missing.",
                        "The age of the samples is missing.")
                .contains("is not two figures", ">1 x</textarea>");
        assertThat(desk.post("/trials/curves", kept("1 2", Map.of("against", "SHEAR_RATE")))
                        .body())
                .contains("no defined shear rate");
        assertThat(desk.ledger().drawer("viscosity-curve", ViscosityCurve.class).list())
                .isEmpty();
        assertThat(desk.get("/trials/curves/v0009").status()).isEqualTo(404);
    }
}
