package stillroom.desk.products;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillroom.desk.OpenDesk;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Brief.People;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.quantity.Interval;

final class ProductPagesTest {
    @TempDir
    private Path folder;

    private OpenDesk desk;

    @BeforeEach
    void open() {
        desk = OpenDesk.in(folder);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private static Map<String, String> brief() {
        Map<String, String> form = new LinkedHashMap<>();
        form.put("name", "Foam <i>wash</i> & more");
        form.put("type", "HAND_WASH");
        form.put("people-ADULTS", "on");
        form.put("people-PREGNANT", "on");
        form.put("where", "hands");
        form.put("feel", "soft");
        form.put("ph-low", "4,8");
        form.put("ph-high", "5.6");
        form.put("ph-target", "5.2");
        form.put("ceiling", "1.20");
        form.put("claims", "mild\n\nsmells of the sea");
        form.put("pack", "pump bottle, 250 ml");
        form.put("market", "UK");
        form.put("note", "for the market stall");
        return form;
    }

    private Product only() {
        assertThat(desk.ledger().products().products()).hasSize(1);
        return desk.ledger().products().products().get(0);
    }

    @Test
    void anEmptyWorkshopOffersToBegin() {
        assertThat(desk.get("/products").body()).contains("No product yet").contains("href=\"/products/new\"");
    }

    @Test
    void aFormulaOfUnknownMaterialsIsNotCalledFreeOfWarnings() {
        Bench bench = Bench.on(desk);
        bench.post("", bench.formWithLine("n1", "Something of a friend", "1"));
        assertThat(desk.get("/products").body()).containsPattern("<td>(none|\\d+); 1 material unknown</td>");
    }

    @Test
    void aProductBeginsWithItsBriefAndADraft() {
        Answer answer = desk.post("/products/new", brief());
        assertThat(answer.status()).isEqualTo(303);
        Product product = only();
        assertThat(answer.location()).startsWith("/products/" + product.id() + "/versions/1");
        assertThat(product.brief().type()).isEqualTo(ProductType.HAND_WASH);
        assertThat(product.brief().people()).containsExactlyInAnyOrder(People.ADULTS, People.PREGNANT);
        assertThat(product.brief().phBand()).contains(new Interval(4.8, 5.6));
        assertThat(product.brief().claims()).containsExactly("mild", "smells of the sea");
        assertThat(product.brief().market()).isEqualTo("UK");
        assertThat(desk.get(answer.location()).body()).contains("Foam &lt;i&gt;wash&lt;/i&gt; &amp; more");
        assertThat(desk.get("/products").body()).contains("Version 1").doesNotContain("<i>wash");
    }

    @ParameterizedTest
    @CsvSource({
        "name, '', A name is missing",
        "ph-low, acid, type it like 2.5 or 2,5",
        "ph-high, 15, must lie between 0 and 14",
        "ph-high, '', A band has two ends",
        "ph-high, 4, The upper end lies below the lower one",
        "ph-target, 7, lies outside the band",
        "ceiling, -1, must lie between 0 and 1000000",
        "market, XX, not one of the choices",
        "type, SOUP, not one of the choices",
    })
    void aBriefThatCannotBeReadStaysAsTyped(String field, String typed, String sentence) {
        Map<String, String> form = brief();
        form.put(field, typed);
        Answer answer = desk.post("/products/new", form);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body())
                .contains(sentence)
                .contains("smells of the sea")
                .contains("value=\"soft\"");
        assertThat(desk.ledger().products().products()).isEmpty();
    }

    @Test
    void aBriefForNobodyIsAskedAgain() {
        Map<String, String> form = brief();
        form.remove("people-ADULTS");
        form.remove("people-PREGNANT");
        assertThat(desk.post("/products/new", form).body()).contains("Say who will use it");
    }

    @Test
    void theBriefIsChangedInItsPlace() {
        desk.post("/products/new", brief());
        String path = "/products/" + only().id() + "/brief";
        assertThat(desk.get(path).body()).contains("value=\"4.8\"").contains("smells of the sea");
        Map<String, String> form = brief();
        form.put("name", "Sea wash");
        assertThat(desk.post(path, form).status()).isEqualTo(303);
        assertThat(only().name()).isEqualTo("Sea wash");
    }

    @Test
    void theClaimsGateAnswersWhileClaimsAreTyped() {
        Map<String, String> form = brief();
        form.put("claims", "SPF 30 <script>");
        Answer answer = desk.post("/products/claims", form);
        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.body())
                .contains("governed by another law")
                .contains("&lt;script&gt;")
                .doesNotContain("<script>");
        form.put("claims", "gentle");
        assertThat(desk.post("/products/claims", form).body()).doesNotContain("governed by another law");
        assertThat(desk.ledger().products().products()).isEmpty();
    }

    @Test
    void theFormulaCallsAGovernedClaimWhatTheBriefCallsIt() {
        Bench bench = Bench.on(desk);
        Product product = bench.product();
        Map<String, String> form = brief();
        form.put("claims", "SPF 30");
        desk.post("/products/" + product.id() + "/brief", form);
        for (String page : List.of("/products/" + product.id(), bench.path())) {
            assertThat(desk.get(page).body())
                    .containsPattern(
                            "finding-breach\">\\s*<p><span class=\"finding-kind\">governed by another law</span>");
        }
        assertThat(desk.get(bench.path()).body()).doesNotContain("probable fault</span> · \"SPF 30");
    }

    @Test
    void aDuplicateHasTheBriefAndTheNewestFormula() {
        Bench bench = Bench.on(desk);
        Answer answer = desk.post("/products/" + bench.product().id() + "/copy", Map.of("name", "Hand wash"));
        assertThat(answer.status()).isEqualTo(303);
        Product copy = desk.ledger().products().products().stream()
                .filter(product -> product.id() != bench.product().id())
                .findFirst()
                .orElseThrow();
        assertThat(copy.brief()).isEqualTo(bench.product().brief());
        FormulaVersion version = desk.ledger().products().newest(copy.id()).orElseThrow();
        assertThat(version.formula()).isEqualTo(Bench.FORMULA);
        assertThat(version.kept()).isFalse();
        assertThat(version.why()).contains("Copied from Hand wash, version 1");
    }

    @Test
    void aDuplicateNeedsAName() {
        Bench bench = Bench.on(desk);
        Answer answer = desk.post("/products/" + bench.product().id() + "/copy", Map.of("name", " "));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("A name is missing");
    }

    @Test
    void aNewVersionBeginsAsACopyOfTheOneItIsFrom() {
        Bench bench = Bench.on(desk);
        bench.post("/keep", bench.form());
        String path = "/products/" + bench.product().id();
        Answer answer = desk.post(path + "/versions", Map.of("from", "1"));
        assertThat(answer.location()).startsWith(path + "/versions/2");
        FormulaVersion begun =
                desk.ledger().products().version(bench.product().id(), 2).orElseThrow();
        assertThat(begun.basedOn()).contains(1);
        assertThat(begun.formula()).isEqualTo(Bench.FORMULA);
        assertThat(desk.get(path).body()).contains("from version 1").contains("Work on version 2");
        assertThat(desk.post(path + "/versions", Map.of("from", "9")).status()).isEqualTo(404);
    }

    @Test
    void theProductNamesTheBatchesOfEachVersion() {
        Bench bench = Bench.on(desk);
        bench.post("/keep", bench.form());
        desk.ledger().batches().open(bench.product().id(), Optional.of(1), "261125-7", LocalDate.of(2026, 11, 25));
        assertThat(desk.get("/products/" + bench.product().id()).body()).contains("261125-7, planned");
    }

    @Test
    void twoVersionsStandSideBySideWithTheirChangesInWords() {
        Bench bench = Bench.on(desk);
        Map<String, List<String>> changed = bench.formWithLine("n1", "Glycerin 86 %", "1");
        changed.put("line-b-amount", List.of("6"));
        changed.put("line-c-phase", List.of("p2"));
        changed.put(
                "line",
                changed.get("line").stream().filter(id -> !id.equals("d")).toList());
        bench.post("/branch", changed);
        String path = "/products/" + bench.product().id() + "/compare";
        Answer answer = desk.get(path + "?left=1&right=2");
        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.body())
                .contains("amount changed")
                .contains("new, in Water phase")
                .contains("moved from Water phase to At the end")
                .contains("taken out, was in At the end")
                .contains("comes to another amount");
        assertThat(desk.get(path + "?left=1&right=1").body()).contains("No line differs.");
        assertThat(desk.get(path + "?left=1&right=7").status()).isEqualTo(404);
        assertThat(desk.get(path + "?left=a").status()).isEqualTo(404);
    }

    @Test
    void linesFromASpreadsheetAreShownBeforeTheyAreAdded() {
        Bench bench = Bench.on(desk);
        Map<String, List<String>> form = new LinkedHashMap<>();
        form.put("edit", List.of("1"));
        form.put("phase", List.of("p2"));
        form.put("lines", List.of("glycerin 86 %\t2,5\r\nMoon <u>dust</u>;0.1 %\r\n1.5\tPotassium sorbate"));
        form.put("do", List.of("look"));
        Answer looked = bench.post("/paste", form);
        assertThat(looked.status()).isEqualTo(200);
        assertThat(looked.body())
                .contains("no card:")
                .contains("Moon &lt;u&gt;dust")
                .doesNotContain("<u>dust");
        assertThat(bench.stored().formula()).isEqualTo(Bench.FORMULA);

        form.put("do", List.of("add"));
        assertThat(bench.post("/paste", form).status()).isEqualTo(303);
        List<Line> lines = bench.stored().formula().phase("p2").orElseThrow().lines();
        assertThat(lines)
                .extracting(Line::materialKey)
                .containsExactly("citric-acid-50", "glycerin-86", "Moon <u>dust</u>", "potassium-sorbate");
        assertThat(lines).extracting(Line::amount).contains(Amount.fixed("2.5"), Amount.fixed("0.1"));
        assertThat(lines).extracting(Line::id).doesNotHaveDuplicates();
        assertThat(bench.post("/paste", form).status())
                .as("the form is stale now")
                .isEqualTo(409);
    }

    @Test
    void linesWithoutAFigureAreNotAdded() {
        Bench bench = Bench.on(desk);
        Map<String, List<String>> form = new LinkedHashMap<>();
        form.put("edit", List.of("1"));
        form.put("lines", List.of("Ingredient\tpercent\nGlycerin 86 %\t101"));
        Answer answer = bench.post("/paste", form);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body())
                .contains("There is no percentage from 0 to 100 in")
                .contains("Ingredient");
        assertThat(bench.stored().formula()).isEqualTo(Bench.FORMULA);
    }

    @Test
    void aVersionWithAnUnknownMaterialCanBeKept() {
        Bench bench = Bench.on(desk);
        assertThat(bench.post("/keep", bench.formWithLine("n1", "Moon dust", "1"))
                        .status())
                .isEqualTo(303);
        assertThat(desk.get(bench.path()).body()).contains("Moon dust").contains("kept");
    }

    @Test
    void aLongListIsCutIntoPages() {
        for (int i = 10; i < 30; i++) {
            desk.ledger().products().add("Product " + i, Brief.of(ProductType.TONER), "");
        }
        assertThat(desk.get("/products").body())
                .contains("Product 21", "More products")
                .doesNotContain("Product 22");
        assertThat(desk.get("/products?page=2").body())
                .contains("Product 22", "Product 29")
                .doesNotContain("More products");
        assertThat(desk.get("/products?page=x").body()).contains("Product 10");
    }

    @Test
    void theListCountsTheWarningsOfTheNewestVersion() {
        Bench bench = Bench.on(desk);
        assertThat(Bench.warnings(desk.get(bench.path()).body())).isZero();
        bench.post("", bench.formWith("line-b-kind", "TO_HUNDRED"));
        int warnings = Bench.warnings(desk.get(bench.path()).body());
        assertThat(warnings).as("two lines up to 100").isPositive();
        assertThat(desk.get("/products").body()).contains("<td>" + warnings + "</td>");
    }
}
