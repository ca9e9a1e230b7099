package stillroom.desk.journeys;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions.ContainsTextOptions;
import com.microsoft.playwright.assertions.LocatorAssertions.HasCountOptions;
import com.microsoft.playwright.assertions.LocatorAssertions.HasValueOptions;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
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

/** Writing a formula faster than answers come, without a mouse: nothing typed is lost or lands in another field. */
@Tag("browser")
final class FormulaByKeyboardTest {
    /** Milliseconds; a busy machine answers late, and that is no fault here. */
    private static final int PATIENCE = 30_000;

    private static final List<List<String>> TYPED = List.of(
            List.of("Water, purified", "q.s."),
            List.of("Glycerin 86 %", "5"),
            List.of("Moon dust", "12,5"),
            List.of("Sodium benzoate", "0.5"),
            List.of("Citric acid 50 % solution", "0.3"));

    @TempDir
    private Path folder;

    @Test
    void isWrittenFasterThanAnswersCome() {
        try (OpenDesk desk = OpenDesk.in(folder);
                BenchBrowser browser = new BenchBrowser()) {
            Product product = begin(desk);
            Page page = browser.desktop(desk.address());
            String path = "/products/" + product.id() + "/versions/1";
            page.route("**" + path, route -> {
                LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(250));
                route.resume();
            });
            page.navigate(path);
            page.locator(".line-blank .cell-material input").first().focus();
            for (List<String> line : TYPED) {
                page.keyboard().type(line.get(0));
                page.keyboard().press("Tab");
                page.keyboard().type(line.get(1));
                page.keyboard().press("Enter");
            }
            assertThat(page.locator(".line:not(.line-blank)"))
                    .hasCount(TYPED.size(), new HasCountOptions().setTimeout(PATIENCE));
            assertThat(page.locator("#amounts"))
                    .containsText("All of it is saved.", new ContainsTextOptions().setTimeout(PATIENCE));
            List<Line> lines = stored(desk, product).lines();
            assertThat(lines)
                    .extracting(Line::materialKey)
                    .containsExactly("water-purified", "glycerin-86", "Moon dust", "sodium-benzoate", "citric-acid-50");
            assertThat(lines)
                    .extracting(Line::amount)
                    .containsExactly(
                            new Amount.ToHundred(),
                            Amount.fixed("5"),
                            Amount.fixed("12.5"),
                            Amount.fixed("0.5"),
                            Amount.fixed("0.3"));
            movesUp(desk, product, page);
            leavesOnlyWhenSaved(desk, product, page);
            assertThat(browser.complaints()).isEmpty();
        }
    }

    /** Alt and an arrow move the line, and the focus stays with it. */
    private static void movesUp(OpenDesk desk, Product product, Page page) {
        page.locator(".line .cell-material input").nth(1).focus();
        String field = (String) page.evaluate("document.activeElement.id");
        page.keyboard().press("Alt+ArrowUp");
        assertThat(page.locator(".line .cell-material input").first())
                .hasValue("Glycerin 86 %", new HasValueOptions().setTimeout(PATIENCE));
        assertThat(page.evaluate("document.activeElement.id")).isEqualTo(field);
        assertThat(stored(desk, product).lines().get(0).materialKey()).isEqualTo("glycerin-86");
    }

    private static void leavesOnlyWhenSaved(OpenDesk desk, Product product, Page page) {
        page.locator(".line .amount").first().fill("6");
        page.locator(".crumbs a").last().click();
        page.waitForURL("**/products/" + product.id());
        assertThat(stored(desk, product).lines().get(0).amount()).isEqualTo(Amount.fixed("6"));
    }

    private static Product begin(OpenDesk desk) {
        Product product = desk.ledger().products().add("Hand wash", Brief.of(ProductType.HAND_WASH), "");
        Formula one = new Formula(List.of(new Phase("p1", "In one", List.of(), List.of())));
        desk.ledger().products().newVersion(product.id(), Optional.empty(), one, "", OpenDesk.NOW);
        return product;
    }

    private static Formula stored(OpenDesk desk, Product product) {
        return desk.ledger().products().version(product.id(), 1).orElseThrow().formula();
    }
}
