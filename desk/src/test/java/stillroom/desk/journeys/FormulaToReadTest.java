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

/** What stands in the fields of a formula can be read without moving about in them. */
@Tag("browser")
final class FormulaToReadTest {
    private static final Formula LONG_NAMES = new Formula(List.of(new Phase(
            "p1",
            "In one",
            List.of(
                    new Line("a", "water-purified", new Amount.ToHundred(), ""),
                    new Line("b", "glycerin-99", Amount.fixed("3"), "humectant, takes the sting off the acid"),
                    new Line("c", "phenoxyethanol-ethylhexylglycerin", Amount.fixed("0.8"), "preservative")),
            List.of())));

    @TempDir
    private Path folder;

    @Test
    void namesAndNotesAreNotCutOffOnADesk() {
        try (OpenDesk desk = OpenDesk.in(folder);
                BenchBrowser browser = new BenchBrowser()) {
            Product product = desk.ledger().products().add("Toner", Brief.of(ProductType.TONER), "");
            desk.ledger().products().newVersion(product.id(), Optional.empty(), LONG_NAMES, "", OpenDesk.NOW);
            Page page = browser.desktop(desk.address());
            page.navigate("/products/" + product.id() + "/versions/1");
            Sight.of(page).calm();
            assertThat(page.locator("#line-c-material").inputValue()).hasSizeGreaterThan(40);
            assertThat(page.evaluate("[...document.querySelectorAll('.line:not(.line-blank) input:not([type=hidden])')]"
                            + ".filter(field => field.scrollWidth > field.clientWidth).map(field => field.id)"))
                    .isEqualTo(List.of());
            assertThat(browser.complaints()).isEmpty();
        }
    }
}
