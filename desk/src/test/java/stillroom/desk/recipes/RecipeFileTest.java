package stillroom.desk.recipes;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.desk.journeys.BenchBrowser;
import stillroom.desk.shell.Format;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.HandOut;
import stillroom.formulary.formula.HandOut.LineWords;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.formula.Step;
import stillroom.formulary.judgement.Evaluator;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.judgement.law.LineLimits;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.plan.BatchSize;
import stillroom.formulary.plan.Bench;
import stillroom.formulary.plan.OwnStrength;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.plan.Planner;
import stillroom.formulary.plan.Tolerances;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;
import stillroom.formulary.rule.RuleBook;

/** The recipe file in a real browser, from disk, with the network off: its figures are the planner's. */
@Tag("browser")
final class RecipeFileTest {
    private static final LocalDate TODAY = LocalDate.ofInstant(OpenDesk.NOW, ZoneOffset.UTC);
    private static final RuleBook RULES = Evaluator.standard().rules();
    private static final List<String> SIZES = List.of(
            "7", "12.5", "20", "33.3", "50", "75", "99.9", "100", "120", "150.5", "250", "333", "420", "500", "777.7",
            "1000", "1234.56", "2500", "5000", "20000");

    @TempDir
    private Path folder;

    /** A wash with a surfactant, a limited preservative, a perfume that the law limits nowhere, and an acid up to the pH. */
    private static Formula wash() {
        return new Formula(List.of(
                new Phase(
                        "p1",
                        "Gum",
                        List.of(line("g", "glycerin-99", "3"), line("x", "xanthan-gum", "0.333")),
                        List.of(new Step(
                                "s1", "Stir <b>well</b>.", Optional.empty(), "", Optional.of(10.0), "no lumps", ""))),
                new Phase(
                        "p2",
                        "Wash",
                        List.of(
                                new Line("w", "water-purified", new Amount.ToHundred(), ""),
                                line("s", surfactant(), "22.5"),
                                line("p", "phenoxyethanol", "0.95"),
                                new Line(
                                        "a",
                                        "citric-acid",
                                        new Amount.ToReading(
                                                ReadingKind.PH,
                                                Percent.of("0.15"),
                                                new PercentRange(Percent.of("0.05"), Percent.of("0.4"))),
                                        "")),
                        List.of())));
    }

    private static String surfactant() {
        return "cocamidopropyl-betaine-30";
    }

    private static Line line(String id, String material, String percent) {
        return new Line(id, material, Amount.fixed(percent), "");
    }

    private record Given(MaterialBook book, Product product, FormulaVersion version, Path file) {}

    private Given given(OpenDesk desk) throws IOException {
        Product product =
                desk.ledger().products().add("Wash <of> the test", Brief.of(ProductType.HAND_WASH), "private");
        FormulaVersion version =
                desk.ledger().products().newVersion(product.id(), Optional.empty(), wash(), "", OpenDesk.NOW);
        String path = "/products/" + product.id() + "/versions/1";
        desk.ledger()
                .drawer("hand-out", HandOut.class)
                .write(
                        product.id() + "/1",
                        new HandOut(
                                Grams.of("500"),
                                Grams.of("0.1"),
                                Map.of("s", new LineWords("cleans <i>", List.of("another amphoteric"), true)),
                                false,
                                false));
        OpenDesk.Answer answer = desk.get(path + "/recipe.html");
        assertThat(answer.status()).as(answer.body()).isEqualTo(200);
        Path file = Files.writeString(folder.resolve("recipe.html"), answer.body());
        return new Given(desk.ledger().materials().book(), product, version, file);
    }

    @Test
    void opensFromDiskWithoutScriptsAtTheAuthorsSize() throws IOException {
        try (OpenDesk desk = OpenDesk.in(folder.resolve("home"));
                BenchBrowser browser = new BenchBrowser()) {
            Given given = given(desk);
            assertThat(Files.size(given.file())).isLessThan(200_000);
            Page page = browser.offline(false);
            page.navigate(given.file().toUri().toString());
            assertThat(grams(page))
                    .isEqualTo(planned(given, "500", "0.1", Map.of()).orElseThrow());
            assertThat(page.locator("h1").innerText()).isEqualTo("Wash <of> the test");
            assertThat(page.locator("main").innerText())
                    .contains("Stir <b>well</b>.", "cleans <i>", "Or: another amphoteric", "Look for: no lumps")
                    .doesNotContain("private");
            assertThat(page.locator("#yours").isVisible()).isFalse();
        }
    }

    @Test
    void itsFiguresAreThePlannersAtTwentySizesAndFourBalances() throws IOException {
        try (OpenDesk desk = OpenDesk.in(folder.resolve("home"));
                BenchBrowser browser = new BenchBrowser()) {
            Given given = given(desk);
            Page page = browser.offline(true);
            page.navigate(given.file().toUri().toString());
            int refused = 0;
            for (String step : HandOutPage.STEPS) {
                page.locator("#step").selectOption(step);
                for (String size : SIZES) {
                    page.locator("#size").fill(size);
                    refused += agrees(given, page, size, step, Map.of()) ? 0 : 1;
                }
            }
            assertThat(refused).as("sizes that are too small for the balance").isBetween(10, 40);
            page.locator("#step").selectOption("0.01");
            for (String own : List.of("25", "27.5", "36.2", "41,3", "100")) {
                page.locator("[data-own=s]").fill(own);
                for (String size : SIZES) {
                    page.locator("#size").fill(size);
                    agrees(given, page, size, "0.01", Map.of("s", new BigDecimal(own.replace(',', '.'))));
                }
            }
            page.locator("#size").fill("lots");
            assertThat(page.locator("#refusals").innerText()).contains("Type the batch in grams");
            page.locator("#size").fill("100");
            page.locator("[data-own=s]").fill("5");
            assertThat(page.locator("#refusals").innerText()).contains("nothing is left for the water");
            assertThat(browser.complaints()).isEmpty();
        }
    }

    /** Whether there are figures; those must be the planner's, and where it refuses there must be none. */
    private static boolean agrees(Given given, Page page, String size, String step, Map<String, BigDecimal> own) {
        Optional<Map<String, String>> planned = planned(given, size, step, own);
        String what = size + " g on " + step + " g, " + own + ": "
                + page.locator("#refusals").innerText();
        if (planned.isEmpty()) {
            assertThat(grams(page).values()).as(what).containsOnly("–");
            assertThat(page.locator("#refusals").isVisible()).as(what).isTrue();
        } else {
            assertThat(grams(page)).as(what).isEqualTo(planned.get());
            assertThat(page.locator("#refusals").isVisible()).as(what).isFalse();
        }
        return planned.isPresent();
    }

    private static Map<String, String> grams(Page page) {
        Map<String, String> grams = new LinkedHashMap<>();
        for (String id : List.of("g", "x", "w", "s", "p", "a")) {
            grams.put(id, page.locator("[data-grams=" + id + "]").innerText());
        }
        return grams;
    }

    /** The program's own figures; empty where it refuses. */
    private static Optional<Map<String, String>> planned(
            Given given, String size, String step, Map<String, BigDecimal> own) {
        Map<String, PercentRange> allowed = LineLimits.of(
                Subjects.of(given.version().formula(), given.product().brief()), given.book(), RULES, TODAY);
        BigDecimal written = Strengths.middle(
                        given.book().material(surfactant()).orElseThrow())
                .orElseThrow();
        OwnStrength strength = new OwnStrength(Map.of("s", written), own);
        Formula formula = strength.of(given.version().formula()).orElseThrow();
        Bench bench = new Bench(List.of(RecipeSheet.balance(Grams.of(step))), List.of(), Tolerances.USUAL);
        Plan plan = new Planner(given.book(), bench, TODAY)
                .plan(formula, new BatchSize.Stated(Grams.of(size)), strength.limits(allowed));
        boolean refused = plan.refused()
                || plan.lines().stream().anyMatch(line -> line.target().signum() <= 0);
        if (refused) {
            return Optional.empty();
        }
        Map<String, String> grams = new LinkedHashMap<>();
        for (String id : List.of("g", "x", "w", "s", "p", "a")) {
            PlannedLine line = plan.line(id).orElseThrow();
            grams.put(id, Format.grams(line.target(), Grams.of(step)));
        }
        return Optional.of(grams);
    }
}
