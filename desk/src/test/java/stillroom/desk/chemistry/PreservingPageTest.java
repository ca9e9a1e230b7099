package stillroom.desk.chemistry;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
import stillroom.formulary.quantity.Interval;

class PreservingPageTest {
    @TempDir
    Path folder;

    static String version(OpenDesk desk, Optional<Interval> band, String... pairs) {
        List<Line> lines = new java.util.ArrayList<>();
        for (int i = 0; i < pairs.length; i += 2) {
            Amount amount = pairs[i + 1].equals("q.s.") ? new Amount.ToHundred() : Amount.fixed(pairs[i + 1]);
            lines.add(new Line("l" + i, pairs[i], amount, ""));
        }
        Brief brief = new Brief(
                ProductType.FACE_CREAM,
                Set.of(Brief.People.ADULTS),
                "",
                "",
                band,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                "",
                "EU");
        Product product = desk.ledger().products().add("Cream", brief, "");
        Formula formula = new Formula(List.of(new Phase("p", "A", lines, List.of())));
        desk.ledger().products().newVersion(product.id(), Optional.empty(), formula, "", OpenDesk.NOW);
        return "/products/" + product.id() + "/versions/1";
    }

    /** 0.5 % sodium benzoate: 0.4237 % as acid, 61.5 % of it undissociated at pH 4 (recomputed), 13.8 % at pH 5. */
    @Test
    void theCurveStandsAsFiguresTooAndTheOwnPhIsMarked() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            String path = version(
                    desk,
                    Optional.of(new Interval(4.5, 5)),
                    "water-purified",
                    "q.s.",
                    "sodium-benzoate",
                    "0.5",
                    "pentylene-glycol",
                    "2");
            String page = desk.get(path + "/preservation").body();
            assertThat(page)
                    .contains("Only a challenge test shows that a product is preserved")
                    .contains("data-low=\"4.5000\"")
                    .contains("data-high=\"5.0000\"")
                    .contains("<td class=\"number\">61.5</td>")
                    .contains("<td class=\"number\">13.8</td>")
                    .contains("its own")
                    .contains("not counted here: Pentylene Glycol")
                    .contains("gap: short of the lowest published figure by")
                    .contains("Gram-positive bacteria")
                    .doesNotContainIgnoringCase("sufficient");
        }
    }

    @Test
    void withoutAPhNothingIsMarkedAndItIsSaid() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            String path = version(
                    desk,
                    Optional.empty(),
                    "water-purified",
                    "q.s.",
                    "soap-potassium-40",
                    "20",
                    "sodium-benzoate",
                    "0.5");
            assertThat(desk.get(path + "/preservation").body())
                    .contains("No pH is known")
                    .contains("data-low=\"\"")
                    .contains("The same in figures");
            assertThat(desk.get("/products/1/versions/7/preservation").status()).isEqualTo(404);
        }
    }
}
