package stillroom.desk.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.start.Main;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.material.Lot;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.Ledger;

/** A whole weigh-out with a premix, an over-pour, a lot that runs out, and a program that is killed half way. */
@Tag("browser")
final class ADayThatGoesWrongTest {
    private static final String WATER = "water-purified";
    private static final String GLYCERIN = "glycerin-99";
    private static final String OIL = "sunflower-oil";
    private static final String LITTLE = "sodium-gluconate";

    @TempDir
    private Path folder;

    @Test
    void nothingIsLostAndTheBookIsRight() throws Exception {
        String plan = workshop();
        try (BenchBrowser browser = new BenchBrowser()) {
            Process first = null;
            Process second = null;
            try {
                first = program();
                Page page = browser.desktop(address(first));
                String code = premixAndPlan(page, plan);
                overPour(page);
                // What was written down is on disk before the screen says so.
                first.destroyForcibly().waitFor();
                browser.takeComplaints();
                second = program();
                Page again = browser.desktop(address(second));
                goOn(again, code);
                assertThat(browser.complaints()).isEmpty();
            } finally {
                end(first);
                end(second);
            }
        }
        theBookIsRight();
    }

    private static void end(@org.jspecify.annotations.Nullable Process process) throws InterruptedException {
        if (process != null) {
            process.destroyForcibly().waitFor();
        }
    }

    /** A workshop with one coarse scale, and a formula with a line that it cannot weigh. */
    private String workshop() {
        try (Ledger ledger = Ledger.open(folder)) {
            ledger.equipment()
                    .writeBalances(List.of(new Balance("Scale", Grams.of("0.1"), Optional.empty(), Grams.of("3000"))));
            lot(ledger, "W-1", WATER, "5000");
            lot(ledger, "G-1", GLYCERIN, "500");
            lot(ledger, "O-1", OIL, "40");
            lot(ledger, "O-2", OIL, "500");
            lot(ledger, "S-1", LITTLE, "100");
            long product = ledger.products()
                    .add("Milk", Brief.of(ProductType.OTHER_RINSE_OFF), "")
                    .id();
            Formula formula = new Formula(List.of(new Phase(
                    "all",
                    "All",
                    List.of(
                            new Line("w", WATER, new Amount.ToHundred(), ""),
                            new Line("g", GLYCERIN, Amount.fixed("5"), ""),
                            new Line("s", LITTLE, Amount.fixed("0.2"), ""),
                            new Line("o", OIL, Amount.fixed("12"), "")),
                    List.of())));
            ledger.products().newVersion(product, Optional.empty(), formula, "first", Instant.now());
            return "/products/" + product + "/versions/1/plan?by=mass&mass=500&balance=Scale";
        }
    }

    private static void lot(Ledger ledger, String code, String material, String grams) {
        ledger.lots()
                .add(new Lot(
                        code,
                        material,
                        "",
                        "Invented supplier",
                        Grams.of(grams),
                        LocalDate.now(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Lot.State.RELEASED,
                        ""));
    }

    private Process program() throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        Main.class.getName(),
                        "--data",
                        folder.toString(),
                        "--port",
                        "0",
                        "--no-browser")
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static String address(Process program) throws IOException {
        BufferedReader out =
                new BufferedReader(new InputStreamReader(program.getInputStream(), StandardCharsets.UTF_8));
        Pattern address = Pattern.compile("http://127\\.0\\.0\\.1:\\d+");
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            Matcher found = address.matcher(line);
            if (found.find()) {
                return found.group();
            }
        }
        throw new IllegalStateException("the program ended before it said where it is");
    }

    /** Presses a button and waits for what it brings: each page of the bench names its form anew. */
    private static void press(Page page, String button) {
        Locator form = page.locator("input[name=requestId]");
        String before = form.count() > 0 ? form.first().inputValue() : "";
        page.getByRole(
                        com.microsoft.playwright.options.AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(button).setExact(true))
                .first()
                .click();
        page.waitForFunction(
                "b => { const i = document.querySelector('input[name=requestId]');"
                        + " return b === '' ? !!i : !i || i.value !== b; }",
                before);
    }

    private static void follow(Page page, String link) {
        page.getByRole(
                        com.microsoft.playwright.options.AriaRole.LINK,
                        new Page.GetByRoleOptions().setName(link).setExact(true))
                .first()
                .click();
    }

    private static void ready(Page page, String vessel) {
        page.fill("#newVessel", vessel);
        page.fill("#tare", "300");
        page.fill("#clean", "washed");
        page.fill("#by", "Ada");
        press(page, "The vessel is ready");
    }

    /** Writes down what stands large on the screen, until no weighing is asked for. */
    private static void weighWhatIsAsked(Page page, String until) {
        for (int i = 0; i < 12 && page.locator("#mass").count() > 0; i++) {
            if (page.locator("#act-title").textContent().contains(until)) {
                return;
            }
            String figure =
                    page.locator(".act-target .figure").first().textContent().replaceAll("[^0-9.]", "");
            pour(page, figure);
        }
    }

    private static void pour(Page page, String grams) {
        page.fill("#mass", grams);
        press(page, "Write it down");
    }

    private String premixAndPlan(Page page, String plan) {
        page.navigate(plan);
        press(page, "Make the premix of Sodium gluconate");
        ready(page, "Jar");
        weighWhatIsAsked(page, "nothing else");
        press(page, "Done, write it down");
        follow(page, "Put it on the shelf");
        page.waitForSelector("#keeps");
        press(page, "Book it as a lot");
        assertThat(page.locator("#weigh-s").inputValue()).startsWith("PMX-");
        page.fill("#code", "MILK-1");
        page.fill("#who", "Ada");
        press(page, "Begin this batch");
        ready(page, "Kettle");
        return "MILK-1";
    }

    private static void overPour(Page page) {
        weighWhatIsAsked(page, "Glycerin");
        pour(page, "31");
        assertThat(page.locator("#act-title").textContent()).contains("Glycerin");
        press(page, "Make the batch larger");
        assertThat(page.locator("#work").textContent()).contains("The plan is now");
    }

    private static void goOn(Page page, String code) {
        page.navigate("/batches");
        page.getByText(code).first().click();
        follow(page, "To the bench");
        page.waitForSelector("#mass");
        assertThat(page.locator("#work").textContent()).contains("The plan is now", "31 g Glycerin");
        weighWhatIsAsked(page, "Sunflower oil");
        assertThat(page.locator("#lot").inputValue()).isEqualTo("O-1");
        String figure =
                page.locator(".act-target .figure").first().textContent().replaceAll("[^0-9.]", "");
        pour(page, figure);
        // The first bottle held 40 g; the rest came from the second.
        Locator lots = page.getByRole(
                com.microsoft.playwright.options.AriaRole.LINK,
                new Page.GetByRoleOptions().setName(Pattern.compile("Name the lots of entry \\d+")));
        lots.first().click();
        page.waitForSelector("#lot1");
        page.selectOption("#lot1", "O-1");
        page.fill("#part1", "40");
        page.selectOption("#lot2", "O-2");
        press(page, "These are the lots");
        weighWhatIsAsked(page, "nothing else");
        assertThat(page.locator("#work").textContent()).contains("came from: 40 g from lot O-1");
    }

    private void theBookIsRight() throws IOException {
        try (Ledger ledger = Ledger.open(folder)) {
            long id = ledger.batches().byCode("MILK-1").orElseThrow().id();
            BatchState state = BatchState.of(ledger.batches().log(id));
            Plan plan = state.plan().orElseThrow();
            for (PlannedLine line : plan.lines()) {
                assertThat(state.poured(line.lineId()).minus(line.target()).abs())
                        .as(line.materialKey())
                        .isLessThanOrEqualTo(line.tolerance());
            }
            assertThat(plan.batch()).isGreaterThan(Grams.of("560"));
            assertThat(plan.line("s").orElseThrow().materialKey()).startsWith("premix-");
            assertThat(onHand(ledger, "O-1")).isEqualTo(Grams.ZERO);
            assertThat(onHand(ledger, "O-2").plus(state.poured("o"))).isEqualTo(Grams.of("540"));
            assertThat(onHand(ledger, "G-1").plus(state.poured("g"))).isEqualTo(Grams.of("500"));
            assertThat(ledger.batches().firstAltered(id)).isEmpty();
        }
        assertThat(Files.exists(folder.resolve("stillroom.db"))).isTrue();
    }

    private static Grams onHand(Ledger ledger, String code) {
        return ledger.lots().lot(code).orElseThrow().onHand();
    }
}
