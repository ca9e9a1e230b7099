package stillroom.desk.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.quantity.Grams;

/** Where scripts do not run, plain forms do the work. */
@Tag("browser")
final class WorksWithoutScriptsTest {
    private static final Formula WATER_ONLY = new Formula(List.of(new Phase(
            "p1",
            "In one",
            List.of(
                    new Line("a", "water-purified", new Amount.ToHundred(), ""),
                    new Line("b", "glycerin-86", Amount.fixed("5"), "")),
            List.of())));

    @TempDir
    private Path folder;

    @Test
    void aFormulaIsEditedAndABatchIsWeighedAndRead() {
        try (OpenDesk desk = OpenDesk.in(folder);
                BenchBrowser browser = new BenchBrowser()) {
            Product product = desk.ledger().products().add("Toner", Brief.of(ProductType.TONER), "");
            desk.ledger().products().newVersion(product.id(), Optional.empty(), WATER_ONLY, "", OpenDesk.NOW);
            Page page = browser.withoutScripts(desk.address());
            page.setDefaultTimeout(Sight.PATIENCE_MILLIS);
            edits(desk, page);
            begins(page);
            weighs(desk, page);
            reads(desk, page);
            assertThat(browser.complaints()).isEmpty();
        }
    }

    private static void edits(OpenDesk desk, Page page) {
        page.navigate("/products/1/versions/1");
        page.fill("#line-b-amount", "7,5");
        Locator blank = page.locator(".line-blank").first();
        blank.getByLabel("Add a material").fill("Sodium benzoate");
        blank.getByLabel("Amount").fill("0.5");
        press(page, "Save");
        assertThat(page.locator("#amounts").innerText()).contains("All of it is saved.");
        Formula stored = desk.ledger().products().version(1, 1).orElseThrow().formula();
        assertThat(stored.line("b").orElseThrow().amount()).isEqualTo(Amount.fixed("7.5"));
        assertThat(stored.lines()).extracting(Line::materialKey).contains("sodium-benzoate");
        assertThat(page.locator("#line-a-resolved").innerText()).contains("92.00");

        page.fill("#line-b-amount", "lots");
        press(page, "Save");
        assertThat(page.inputValue("#line-b-amount")).isEqualTo("lots");
        assertThat(page.locator("#line-b-amount-problem").innerText()).isNotBlank();
        page.fill("#line-b-amount", "7.5");
        press(page, "Save");
    }

    private static void begins(Page page) {
        page.navigate("/products/1/versions/1/plan");
        page.getByLabel("Batch size").fill("400");
        press(page, "Reckon");
        page.getByLabel("Batch code").fill("T-1");
        page.getByLabel("Who plans").fill("Ada");
        press(page, "Begin this batch");
        page.navigate("/batches/1/bench");
        page.getByLabel("Name of the vessel").fill("Kettle");
        page.getByLabel("How it was cleaned").fill("washed");
        press(page, "The vessel is ready");
    }

    private static void weighs(OpenDesk desk, Page page) {
        page.getByLabel("Poured, as the balance shows it").fill("0");
        press(page, "Write it down");
        assertThat(page.locator("#mass-problem").innerText()).contains("0 g is no weighing.");
        assertThat(page.inputValue("#mass")).isEqualTo("0");
        page.getByLabel("Poured, as the balance shows it").fill("368");
        press(page, "Write it down");
        assertThat(page.locator("#act-title").innerText()).isEqualTo("Glycerin 86 %");
        assertThat(state(desk).poured("a")).isEqualTo(Grams.of("368"));
    }

    private static void reads(OpenDesk desk, Page page) {
        page.getByRole(
                        AriaRole.LINK,
                        new Page.GetByRoleOptions().setName("Reading").setExact(true))
                .click();
        page.locator("#value").fill("5.2");
        press(page, "Write it down");
        assertThat(state(desk).readings())
                .extracting(reading -> reading.event().value())
                .containsExactly(Optional.of(5.2));
    }

    private static void press(Page page, String button) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(button).setExact(true))
                .first()
                .click();
    }

    private static BatchState state(OpenDesk desk) {
        return BatchState.of(desk.ledger().batches().log(1));
    }
}
