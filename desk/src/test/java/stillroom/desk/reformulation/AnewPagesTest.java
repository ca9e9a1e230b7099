package stillroom.desk.reformulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.material.Lot;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Money;
import stillroom.formulary.quantity.Price;

/** On the invented workshop's hand wash. */
class AnewPagesTest {
    @TempDir
    Path folder;

    private OpenDesk desk;
    private FormulaVersion version;

    @BeforeEach
    void open() {
        desk = OpenDesk.in(folder);
        desk.post("/demonstration", Map.of());
        Product product = desk.ledger().products().products().stream()
                .filter(each -> each.brief().type() == stillroom.formulary.formula.ProductType.HAND_WASH)
                .findFirst()
                .orElseThrow();
        version = desk.ledger().products().newest(product.id()).orElseThrow();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private String path() {
        return "/products/" + version.productId() + "/versions/" + version.number() + "/anew";
    }

    private void receive(String material) {
        desk.ledger()
                .lots()
                .add(new Lot(
                        "T-" + material,
                        material,
                        "",
                        "",
                        Grams.of("2000"),
                        LocalDate.of(2026, 11, 1),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new Price(Money.of("9"), Grams.of("1000"))),
                        Lot.State.RELEASED,
                        ""));
    }

    @Test
    void anotherSurfactantIsTakenAsANewDraft() {
        receive("sodium-coco-sulfate");
        receive("olefin-sulfonate-40");
        String query = "?without=sles-27&use=&aim=CHANGE&batch=&cost=&most=&active=10&water=5&family=20";
        OpenDesk.Answer page = desk.get(path() + query);
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.body()).contains("1. With ", "Take this as a new draft version", "Proven: nothing better");
        OpenDesk.Answer taken = desk.post(path() + "/take/1" + query, Map.of());
        assertThat(taken.status()).isEqualTo(303);
        FormulaVersion made =
                desk.ledger().products().newest(version.productId()).orElseThrow();
        assertThat(made.number()).isEqualTo(version.number() + 1);
        assertThat(made.formula().lines())
                .noneMatch(line -> line.materialKey().equals("sles-27"))
                .anyMatch(line -> line.materialKey().equals("sodium-coco-sulfate")
                        || line.materialKey().equals("olefin-sulfonate-40"));
        assertThat(made.why()).contains("without Sodium laureth sulfate");
        assertThat(desk.get(taken.location()).body()).contains("made anew");
    }

    @Test
    void cheaperDrawsCostAgainstChange() {
        receive("sodium-coco-sulfate");
        OpenDesk.Answer page = desk.get(path() + "?aim=COST&curve=on");
        for (int look = 0; look < 40 && page.body().contains("Still looking"); look++) {
            page = desk.get(path() + "?aim=COST&curve=on");
        }
        assertThat(page.body()).contains("Cost against change", "class=\"trade-off\"", "Cost per 100 g");
    }

    @Test
    void whatIsImpossibleIsNamed() {
        OpenDesk.Answer page = desk.get(path() + "?without=sles-27&active=0&water=0&family=0&most=3");
        for (int look = 0; look < 40 && page.body().contains("Still looking"); look++) {
            page = desk.get(path() + "?without=sles-27&active=0&water=0&family=0&most=3");
        }
        assertThat(page.body()).contains("No formula keeps all of this");
    }

    @Test
    void aBandThatCannotBeReadIsAskedAgain() {
        OpenDesk.Answer page = desk.get(path() + "?active=much");
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.body()).contains("not a number").contains("value=\"much\"");
    }

    @Test
    void theFormulaLeadsHere() {
        desk.ledger()
                .products()
                .newVersion(version.productId(), Optional.of(version.number()), version.formula(), "", OpenDesk.NOW);
        String draft = "/products/" + version.productId() + "/versions/" + (version.number() + 1);
        assertThat(desk.get(draft).body()).contains(draft + "/anew\"", "I have no more of this", "without=sles-27");
        assertThat(desk.get("/products/" + version.productId() + "/versions/99/anew")
                        .status())
                .isEqualTo(404);
    }
}
