package stillroom.desk.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ProductType;

/** The list beside an amount, worked by keys: it says what counts, and only where one stops in it counts. */
@Tag("browser")
final class HowItIsMeantTest {
    private static final Formula TWO_LINES = new Formula(List.of(new Phase(
            "p1",
            "In one",
            List.of(
                    new Line("a", "water-purified", Amount.fixed("90"), ""),
                    new Line("b", "citric-acid-50", Amount.fixed("0.4"), "")),
            List.of())));

    @TempDir
    private Path folder;

    @Test
    void qsTypedIsStillSoAfterTheListBesideItHadTheFocus() {
        withEditor((desk, page) -> {
            page.locator("#line-a-amount").focus();
            page.keyboard().type("q.s.");
            page.keyboard().press("Tab");
            saved(page);
            assertThat(page.locator("#line-a-kind").inputValue()).isEqualTo("TO_HUNDRED");
            page.locator("#line-a-note").focus();
            page.keyboard().type("boiled");
            page.keyboard().press("Tab");
            saved(page);
            assertThat(line(desk, "a").amount()).isEqualTo(new Amount.ToHundred());
            assertThat(line(desk, "a").note()).isEqualTo("boiled");
        });
    }

    @Test
    void arrowsThroughTheListDoNotRearrangeTheFormula() {
        withEditor((desk, page) -> {
            page.locator("#line-b-kind").focus();
            page.keyboard().press("ArrowDown");
            page.keyboard().press("ArrowDown");
            page.keyboard().press("Tab");
            saved(page);
            assertThat(line(desk, "b").amount())
                    .isInstanceOfSatisfying(
                            Amount.ToReading.class,
                            amount -> assertThat(amount.expected().toString()).isEqualTo("0.4"));
        });
    }

    private interface Work {
        void on(OpenDesk desk, Page page);
    }

    private void withEditor(Work work) {
        try (OpenDesk desk = OpenDesk.in(folder);
                BenchBrowser browser = new BenchBrowser()) {
            Product product = desk.ledger().products().add("Toner", Brief.of(ProductType.TONER), "");
            desk.ledger().products().newVersion(product.id(), Optional.empty(), TWO_LINES, "", OpenDesk.NOW);
            Page page = browser.desktop(desk.address());
            Sight sight = Sight.of(page);
            page.navigate("/products/" + product.id() + "/versions/1");
            sight.calm();
            work.on(desk, page);
            assertThat(browser.complaints()).isEmpty();
        }
    }

    private static void saved(Page page) {
        new Sight(page).see("All of it is saved.");
    }

    private static Line line(OpenDesk desk, String id) {
        return desk.ledger()
                .products()
                .version(1, 1)
                .orElseThrow()
                .formula()
                .line(id)
                .orElseThrow();
    }
}
