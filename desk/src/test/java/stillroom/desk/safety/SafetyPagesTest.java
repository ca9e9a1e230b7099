package stillroom.desk.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ProductType;

class SafetyPagesTest {
    @TempDir
    Path folder;

    private static String lotion(OpenDesk desk, ProductType type) {
        Product product = desk.ledger().products().add("Lotion", Brief.of(type), "");
        List<Line> lines = List.of(
                new Line("a", "water-purified", new Amount.ToHundred(), ""),
                new Line("b", "phenoxyethanol", Amount.fixed("1"), ""));
        desk.ledger()
                .products()
                .newVersion(
                        product.id(),
                        Optional.empty(),
                        new Formula(List.of(new Phase("p", "A", lines, List.of()))),
                        "",
                        OpenDesk.NOW);
        return "/products/" + product.id() + "/versions/1";
    }

    /** Body lotion 123.20 mg/kg/d, 1 %, half absorbed: 0.616 mg/kg/d; a systemic 100 mg/kg/d gives a margin of 162. */
    @Test
    void aWorkedMarginFromTheFormToThePage() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            String path = lotion(desk, ProductType.BODY_LOTION);
            assertThat(desk.get(path + "/safety").body())
                    .contains("no verdict")
                    .contains("<td>0.616</td>")
                    .contains("none entered");
            assertThat(desk.get(path + "/safety/phenoxyethanol").body()).contains("Point of departure");
            Answer saved = desk.post(
                    path + "/safety/phenoxyethanol",
                    Map.of(
                            "dose", "100",
                            "found", "NO_ADVERSE_EFFECT",
                            "length", "long",
                            "bioavailable", "100",
                            "margin", "",
                            "source", "worked case of the test",
                            "absorption", "",
                            "absorptionSource", ""));
            assertThat(saved.status()).isEqualTo(303);
            String page = desk.get(path + "/safety").body();
            assertThat(page)
                    .contains("<td>162</td>")
                    .contains("worked case of the test")
                    .contains("<td>74.3<");
            assertThat(page).contains("less than asked for");
            assertThat(desk.get(path + "/safety/phenoxyethanol").body()).contains("value=\"100\"");
            assertThat(desk.get(path + "/safety.pdf").status()).isEqualTo(200);
        }
    }

    @Test
    void aFigureWithoutItsSourceIsRefusedAndKept() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            String path = lotion(desk, ProductType.BODY_LOTION);
            Answer refused = desk.post(path + "/safety/phenoxyethanol", Map.of("dose", "357", "absorption", "80"));
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.body())
                    .contains("value=\"357\"")
                    .contains("A point of departure needs its source")
                    .contains("A dermal absorption needs its source");
            assertThat(desk.get(path + "/safety").body()).doesNotContain("357");
            assertThat(desk.get(path + "/safety/no-such-thing").status()).isEqualTo(404);
        }
    }

    /** A toner stands in no exposure table: said, until the maker enters a figure with its source. */
    @Test
    void aKindWithoutAnExposureAsksForOne() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            String path = lotion(desk, ProductType.TONER);
            assertThat(desk.get(path + "/safety").body()).contains("no exposure figure is tabled");
            assertThat(desk.post(path + "/exposure", Map.of("exposure", "12", "exposureSource", ""))
                            .status())
                    .isEqualTo(422);
            assertThat(desk.post(path + "/exposure", Map.of("exposure", "12", "exposureSource", "assessor, invented"))
                            .status())
                    .isEqualTo(303);
            // 12 mg/kg/d × 1 % × 50 %.
            assertThat(desk.get(path + "/safety").body())
                    .contains("<td>0.06</td>")
                    .contains("assessor, invented");
            desk.post(path + "/exposure", Map.of("exposure", "", "exposureSource", ""));
            assertThat(desk.get(path + "/safety").body()).contains("no exposure figure is tabled");
        }
    }
}
