package stillroom.desk.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
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

/** A plan typed faster than the grams are reckoned: the answer does not take back what stands beside the size. */
@Tag("browser")
final class PlanTypedFastTest {
    private static final Formula WATER_ONLY = new Formula(List.of(new Phase(
            "p1", "In one", List.of(new Line("a", "water-purified", new Amount.ToHundred(), "")), List.of())));

    @TempDir
    private Path folder;

    @Test
    void theCodeTypedWhileTheSizeIsReckonedStays() {
        try (OpenDesk desk = OpenDesk.in(folder);
                BenchBrowser browser = new BenchBrowser()) {
            Product product = desk.ledger().products().add("Toner", Brief.of(ProductType.TONER), "");
            desk.ledger().products().newVersion(product.id(), Optional.empty(), WATER_ONLY, "", OpenDesk.NOW);
            Page page = browser.desktop(desk.address());
            Sight sight = Sight.of(page);
            page.navigate("/products/1/versions/1/plan");
            sight.calm();
            page.route("**/plan?**", route -> {
                LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(500));
                route.resume();
            });
            page.locator("#mass").focus();
            page.keyboard().press("Control+a");
            page.keyboard().type("431");
            page.locator("#code").focus();
            page.keyboard().press("Control+a");
            page.keyboard().type("T-7");
            page.locator("#who").focus();
            sight.see("431.0 g");
            assertThat(page.inputValue("#code")).isEqualTo("T-7");
            assertThat(browser.complaints()).isEmpty();
        }
    }
}
