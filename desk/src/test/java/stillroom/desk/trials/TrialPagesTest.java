package stillroom.desk.trials;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.trial.TrialSet;
import stillroom.ledger.Ledger;

class TrialPagesTest {
    @TempDir
    Path folder;

    private OpenDesk desk;

    @BeforeEach
    void open() {
        desk = OpenDesk.in(folder);
        desk.post("/demonstration", Map.of());
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private static TrialSet newest(Ledger ledger) {
        List<TrialSet> all = ledger.drawer("trial-set", TrialSet.class).list();
        return all.get(all.size() - 1);
    }

    @Test
    void theInventedTrialsHaveResultsWithPicturesAndTheirNumbers() {
        TrialSet set = newest(desk.ledger());
        assertThat(desk.get("/trials").body()).contains(set.name());
        assertThat(desk.get("/trials/" + set.key()).body()).contains("Weigh it out", "Laureth sulfate");
        for (long product : List.of(set.base().product(), set.product())) {
            assertThat(desk.get("/products/" + product).body())
                    .contains("/trials/" + set.key(), "trials, 12 of 12 runs measured");
        }
        OpenDesk.Answer results = desk.get("/trials/" + set.key() + "/results?response=Viscosity");
        assertThat(results.status()).isEqualTo(200);
        assertThat(results.body())
                .contains("Standard error", "Worth another run here", "lack of fit", "predicted R²")
                .contains("class=\"contour\"", "Numbers of the picture", "Numbers of the trace of Betaine")
                .contains("The share of the differences between the beakers that the model explains")
                .contains("as it should (p not under 0.05)")
                .contains("2759 to 2914", "at least 0.5115 within the 95 % intervals", "Mixtures that may be as good");
    }

    @Test
    void allRunsArePrintedToBeWeighedOut() throws java.io.IOException {
        TrialSet set = newest(desk.ledger());
        java.net.URI address =
                java.net.URI.create(desk.address() + "/trials/" + set.key() + "/weigh-out.pdf?grams=250");
        try (java.io.InputStream in = address.toURL().openStream();
                org.apache.pdfbox.pdmodel.PDDocument sheet = org.apache.pdfbox.Loader.loadPDF(in.readAllBytes())) {
            String text = new org.apache.pdfbox.text.PDFTextStripper().getText(sheet);
            assertThat(text).contains("250 g a beaker", "Run 1, day 1", "Run 12, day 1", "Foam, ml after 1 min");
            assertThat(text.substring(text.indexOf("Run 2, day 1"), text.indexOf("Run 3, day 1")))
                    .describedAs("run 2 has 40 % laureth sulfate: 100 g of 250 g")
                    .containsPattern("Sodium laureth sulfate 27 % solution[^\\n]*\\n?[^\\n]*100\\.0");
        }
        assertThat(desk.get("/trials/" + set.key() + "/weigh-out.pdf?grams=much")
                        .status())
                .isEqualTo(400);
        assertThat(desk.get("/trials/t9999/weigh-out.pdf").status()).isEqualTo(404);
    }

    @Test
    void theBestMixtureAndTheLeastSureOneCanBeMadeAsFurtherRuns() {
        TrialSet set = newest(desk.ledger());
        String page =
                desk.get("/trials/" + set.key() + "/results?response=Viscosity").body();
        assertThat(page).contains("Water 49.40 %, Laureth sulfate 33.05 %, Betaine 11.95 %", "Make this mixture");
        Map<String, String> form =
                Map.of("mark", TrialBook.mark(set), "at", "best", "response", "Viscosity", "model", "QUADRATIC");
        assertThat(desk.post("/trials/" + set.key() + "/run", form).status()).isEqualTo(303);
        TrialSet.Run best = newest(desk.ledger()).runs().get(12);
        assertThat(best.block()).isEqualTo(2);
        assertThat(best.fractions().get(1) * set.share()).isCloseTo(33.05, org.assertj.core.data.Offset.offset(0.006));
        OpenDesk.Answer late = desk.post("/trials/" + set.key() + "/run", form);
        assertThat(late.status()).isEqualTo(409);
        assertThat(late.body()).contains(Further.CHANGED);
        Map<String, String> unsure = Map.of("mark", TrialBook.mark(newest(desk.ledger())), "at", "unsure");
        assertThat(desk.post("/trials/" + set.key() + "/run", unsure).status()).isEqualTo(303);
        TrialSet.Run second = newest(desk.ledger()).runs().get(13);
        assertThat(second.block())
                .describedAs("joins the day that is still open")
                .isEqualTo(2);
        assertThat(desk.post("/trials/" + set.key(), Map.of("m13-0", "2800")).status())
                .isEqualTo(303);
        assertThat(desk.get("/trials/" + set.key() + "/results").body())
                .describedAs("a run alone on its day tests the fit and leaves it as it was")
                .contains("Foretold for one beaker: 2720 to 2954; measured: 2800. It agrees.", "2759 to 2914");
        desk.post("/trials/" + set.key(), Map.of("m13-0", "1200"));
        assertThat(desk.get("/trials/" + set.key() + "/results").body())
                .contains("measured: 1200. It does not agree", "2759 to 2914");
    }

    @Test
    void aNewSetIsDesignedEnteredFittedAndExtended() {
        Product wash = desk.ledger().products().products().stream()
                .filter(product -> product.name().equals("Foaming hand wash"))
                .findFirst()
                .orElseThrow();
        FormulaVersion version = desk.ledger().products().newest(wash.id()).orElseThrow();
        String sulfate = line(version, "sles-27");
        String betaine = line(version, "cocamidopropyl-betaine-30");
        String water = line(version, "water-purified");
        Map<String, List<String>> form = new LinkedHashMap<>();
        form.put("product", List.of("" + wash.id()));
        form.put("version", List.of("" + version.number()));
        form.put("name", List.of("bounds"));
        form.put("component", List.of(water, sulfate, betaine));
        form.put("low-" + water, List.of("44"));
        form.put("high-" + water, List.of("60"));
        form.put("low-" + sulfate, List.of("26"));
        form.put("high-" + sulfate, List.of("40"));
        form.put("low-" + betaine, List.of("5"));
        form.put("high-" + betaine, List.of("12"));
        form.put("constraints", List.of("x2 + x3 <= 48"));
        form.put("response1", List.of("Thickness"));
        form.put("response1aim", List.of("LARGER"));
        form.put("response1low", List.of("1000"));
        form.put("response1high", List.of("6000"));
        form.put("model", List.of("QUADRATIC"));
        form.put("criterion", List.of("I"));
        form.put("runs", List.of("10"));
        OpenDesk.Answer made = desk.postAll("/trials/new", form);
        assertThat(made.status()).describedAs(made.body()).isEqualTo(303);
        TrialSet set = newest(desk.ledger());
        assertThat(set.runs()).hasSize(10);
        assertThat(set.runs().stream().map(TrialSet.Run::order).sorted().toList())
                .isEqualTo(List.of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10));
        for (TrialSet.Run run : set.runs()) {
            double surfactants = (run.fractions().get(1) + run.fractions().get(2)) * set.share();
            assertThat(surfactants).isLessThanOrEqualTo(48 + 1e-6);
        }
        assertThat(desk.get("/products/" + set.product() + "/versions/1/plan?by=mass&mass=100")
                        .status())
                .isEqualTo(200);
        enterAndFit(set);
    }

    private void enterAndFit(TrialSet set) {
        assertThat(desk.get("/trials/" + set.key() + "/results").body()).contains("0 measured runs cannot tell");
        Map<String, String> typed = set.runs().stream()
                .collect(Collectors.toMap(
                        run -> "m" + run.version() + "-0",
                        run -> "" + Math.round(1000 + 9000 * run.fractions().get(1) + 7 * (run.version() % 3))));
        assertThat(desk.post("/trials/" + set.key(), typed).status()).isEqualTo(303);
        String results =
                desk.get("/trials/" + set.key() + "/results?model=LINEAR").body();
        assertThat(results).contains("The best mixture", "Thickness", "Analysis of variance");
        assertThat(desk.post("/trials/" + set.key(), Map.of("m1-0", "thick")).status())
                .isEqualTo(422);
        assertThat(desk.post("/trials/" + set.key() + "/more", Map.of("more", "2"))
                        .status())
                .isEqualTo(303);
        TrialSet longer = newest(desk.ledger());
        assertThat(longer.runs()).hasSize(12);
        assertThat(longer.runs().get(11).block()).isEqualTo(2);
        assertThat(longer.runs().subList(0, 10).stream()
                        .map(TrialSet.Run::fractions)
                        .toList())
                .isEqualTo(set.runs().stream().map(TrialSet.Run::fractions).toList());
    }

    private static String line(FormulaVersion version, String material) {
        return version.formula().lines().stream()
                .filter(one -> one.materialKey().equals(material))
                .findFirst()
                .orElseThrow()
                .id();
    }

    @Test
    void whatCannotBeDesignedIsSaidBesideItsFieldAndWhatWasTypedIsKept() {
        Product wash = desk.ledger().products().products().get(0);
        FormulaVersion version = desk.ledger().products().newest(wash.id()).orElseThrow();
        String one = version.formula().lines().get(0).id();
        OpenDesk.Answer answer = desk.post(
                "/trials/new",
                Map.of(
                        "product",
                        "" + wash.id(),
                        "version",
                        "" + version.number(),
                        "name",
                        "<b>odd</b>",
                        "component",
                        one,
                        "low-" + one,
                        "9",
                        "high-" + one,
                        "3",
                        "runs",
                        "3"));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body())
                .contains("needs a least and a larger most", "Choose two lines or more", "value=\"&lt;b>odd")
                .doesNotContain("<b>odd");
        assertThat(desk.get("/trials/t9999").status()).isEqualTo(404);
        assertThat(desk.get("/trials/new?product=999&version=1").status()).isEqualTo(404);
    }

    @Test
    void aSaltCurveNamesItsPeakAndStopsShortOfIt() {
        String readings = "1+900%0A1.5+2100%0A2+3900%0A2.5+5600%0A3+6100%0A3.5+5200%0A4+3500";
        String conditions = "&instrument=rotational&spindle=R4+20&celsius=25&age=24";
        OpenDesk.Answer fit =
                desk.get("/trials/salt-curve?readings=" + readings + conditions + "&brought=0.5&wanted=3000");
        assertThat(fit.status()).isEqualTo(200);
        assertThat(fit.body())
                .contains(
                        "peak at a total of",
                        "advice ends",
                        "For 3000",
                        "<polyline",
                        "class=\"tick-text\">2000</text>",
                        "dose for the wanted viscosity: ")
                .contains("Viscosity, mPa s");
        assertThat(desk.get("/trials/salt-curve?readings=" + readings).status())
                .describedAs("without conditions nothing is compared")
                .isEqualTo(422);
        assertThat(desk.get("/trials/salt-curve?readings=" + readings + conditions + "&wanted=6050")
                        .body())
                .contains("not reached on the safe side");
    }

    @Test
    void aFlowCurveNeedsADefinedGeometry() {
        String readings = "0.1+60%0A1+15%0A10+3.8%0A100+0.95%0A1000+0.24";
        assertThat(desk.get("/trials/flow-curve?geometry=CONE_AND_PLATE&readings=" + readings)
                        .body())
                .contains("Best by AICc: power law", "It thins as it is sheared", "too few readings to compare it");
        OpenDesk.Answer disc = desk.get("/trials/flow-curve?geometry=DISC_SPINDLE&readings=" + readings);
        assertThat(disc.status()).isEqualTo(422);
        assertThat(disc.body()).contains("no defined shear rate");
    }
}
