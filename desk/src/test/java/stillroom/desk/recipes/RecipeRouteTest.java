package stillroom.desk.recipes;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
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

/** Which recipes are handed out, and which are not. */
class RecipeRouteTest {
    @TempDir
    Path folder;

    private static String recipe(OpenDesk desk, List<String> claims, Formula formula) {
        Brief plain = Brief.of(ProductType.FACE_CREAM);
        Brief brief = new Brief(
                plain.type(),
                plain.people(),
                "",
                "",
                plain.phBand(),
                plain.phTarget(),
                plain.priceCeilingPer100g(),
                claims,
                "",
                "EU");
        Product product = desk.ledger().products().add("Cream of the test", brief, "");
        desk.ledger().products().newVersion(product.id(), Optional.empty(), formula, "", OpenDesk.NOW);
        return "/products/" + product.id() + "/versions/1/recipe.pdf";
    }

    private static Formula water() {
        return new Formula(List.of(new Phase(
                "p", "All", List.of(new Line("l", "water-purified", new Amount.ToHundred(), "")), List.of())));
    }

    @Test
    void handsOutNoneForAProductUnderAnotherLaw() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            assertThat(desk.get(recipe(desk, List.of("sun protection SPF 30"), water()))
                            .status())
                    .isEqualTo(403);
            assertThat(desk.get(recipe(desk, List.of("leaves hands soft"), water()))
                            .status())
                    .isEqualTo(200);
        }
    }

    @Test
    void refusesASizeThatIsNoMass() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            String recipe = recipe(desk, List.of(), water());
            assertThat(desk.get(recipe + "?grams=-5").status()).isEqualTo(400);
            assertThat(desk.get(recipe + "?grams=NaN").body()).contains("is not a mass in grams");
            assertThat(desk.get(recipe(desk, List.of(), Formula.EMPTY)).status())
                    .isEqualTo(400);
        }
    }

    /** The longest of the demonstration has fifteen lines and six steps with cautions. */
    @Test
    void everyRecipeOfTheDemonstrationStandsOnOnePage() throws Exception {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            desk.post("/demonstration", Map.of());
            for (Product product : desk.ledger().products().products()) {
                String path = "/products/" + product.id() + "/versions/1/recipe.pdf";
                byte[] pdf = HttpClient.newHttpClient()
                        .send(
                                HttpRequest.newBuilder(URI.create(desk.address() + path))
                                        .build(),
                                HttpResponse.BodyHandlers.ofByteArray())
                        .body();
                try (PDDocument document = Loader.loadPDF(pdf)) {
                    assertThat(document.getNumberOfPages()).as(product.name()).isEqualTo(1);
                }
            }
        }
    }
}
