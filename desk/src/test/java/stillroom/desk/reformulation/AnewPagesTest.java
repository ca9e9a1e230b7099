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

    private OpenDesk.Answer answered(String query) {
        OpenDesk.Answer page = desk.get(path() + query);
        for (int look = 0; look < 60 && page.body().contains("Still looking"); look++) {
            page = desk.get(path() + query);
        }
        return page;
    }

    @Test
    void cheaperDrawsCostAgainstChange() {
        receive("sodium-coco-sulfate");
        OpenDesk.Answer page = answered("?aim=COST&curve=on");
        assertThat(page.body())
                .contains("Cost against change", "class=\"trade-off\"", "Cost per 100 g", "take-point/1?");
        OpenDesk.Answer taken = desk.post(path() + "/take-point/1?aim=COST&curve=on", Map.of());
        assertThat(taken.status()).isEqualTo(303);
        assertThat(desk.ledger()
                        .products()
                        .newest(version.productId())
                        .orElseThrow()
                        .number())
                .isEqualTo(version.number() + 1);
    }

    @Test
    void anyTwoGoalsAreDrawnButNotOneAgainstItself() {
        receive("sodium-coco-sulfate");
        assertThat(answered("?aim=CHANGE&curve=on&first=COUNT&second=COST").body())
                .contains("Ingredients against cost");
        OpenDesk.Answer same = desk.get(path() + "?aim=CHANGE&curve=on&first=COST&second=COST");
        assertThat(same.status()).isEqualTo(422);
        assertThat(same.body()).contains("A curve needs two different goals.");
    }

    @Test
    void aMixIsWeighedAsTyped() {
        receive("sodium-coco-sulfate");
        String costly = answered("?aim=MIX&weigh-change=1&weigh-cost=99&weigh-natural=0&weigh-count=0")
                .body();
        String near = answered("?aim=MIX&weigh-change=99&weigh-cost=1&weigh-natural=0&weigh-count=0")
                .body();
        assertThat(costly).contains("1. With Sodium coco-sulfate");
        assertThat(near).contains("1. ").doesNotContain("1. With Sodium coco-sulfate");
        OpenDesk.Answer none = desk.get(path() + "?aim=MIX&weigh-change=0&weigh-cost=0&weigh-natural=0&weigh-count=0");
        assertThat(none.status()).isEqualTo(422);
        assertThat(none.body()).contains("At least one weight of the mix must be above 0.");
    }

    @Test
    void eachBandHasAField() {
        OpenDesk.Answer page = desk.get(path());
        assertThat(page.body())
                .contains("name=\"active\"", "name=\"water\"", "name=\"charge\"", "name=\"hlb\"", "name=\"family\"")
                .contains("name=\"cost\"", "name=\"natural\"", "name=\"most\"", "name=\"of-glycerin\"");
        receive("glycerin-86");
        receive("sodium-coco-sulfate");
        String free = answered("?aim=COST&family=50").body();
        String kept = answered("?aim=COST&family=50&of-glycerin=0").body();
        assertThat(kept).contains("1. ").isNotEqualTo(free);
        assertThat(desk.get(path() + "?of-glycerin=some").status()).isEqualTo(422);
    }

    /** The demonstration has a preservative and water that expire soon: the one stays as it is, of the other there is no want. */
    @Test
    void whatExpiresSoonIsUsedUp() {
        assertThat(answered("?use=soon&aim=CHANGE").body()).contains("Nothing to use up");
        desk.ledger()
                .lots()
                .add(new Lot(
                        "T-soon",
                        "sodium-coco-sulfate",
                        "",
                        "",
                        Grams.of("2000"),
                        LocalDate.of(2026, 1, 1),
                        Optional.empty(),
                        Optional.of(LocalDate.of(2026, 12, 31)),
                        Optional.of(new Price(Money.of("9"), Grams.of("1000"))),
                        Lot.State.RELEASED,
                        ""));
        assertThat(answered("?use=soon&aim=CHANGE&batch=1000").body())
                .contains("1. With Sodium coco-sulfate", "g of Sodium coco-sulfate, needles stay on the shelf.")
                .doesNotContain("Nothing to use up");
    }

    @Test
    void eachWayOutIsOneClick() {
        String body = answered("?without=cocamidopropyl-betaine-30&aim=CHANGE").body();
        assertThat(body)
                .contains("Cocamidopropyl betaine, 30 % active is to go")
                .doesNotContain("Allow 9 % of Cocamidopropyl betaine");
        java.util.regex.Matcher way = java.util.regex.Pattern.compile(
                        "<a class=\"button\" href=\"([^\"]*/anew\\?[^\"]*)\">")
                .matcher(body);
        int ways = 0;
        while (way.find()) {
            String address = way.group(1).replace("&amp;", "&");
            assertThat(answered(address.substring(address.indexOf('?'))).body())
                    .contains("1. ", "Take this as a new draft");
            ways++;
        }
        assertThat(ways).isGreaterThanOrEqualTo(2);
    }

    @Test
    void cheaperSaysWhetherItIsHarsherAndInWhatMoney() {
        String currency = desk.ledger().settings().read().currency();
        String cheaper = answered("?aim=COST").body();
        assertThat(cheaper)
                .containsPattern("(Harsher|Milder) than now: |Neither harsher nor milder: ")
                .containsPattern("Cost per 100 g: <strong>[0-9.]+ to [0-9.]+ " + currency + "<")
                .contains("now %", "then %", ">change<");
        assertThat(answered("?aim=COST&no-harsher=on").body())
                .containsPattern("Milder than now: |Neither harsher nor milder: ")
                .doesNotContain("Harsher than now");
    }

    @Test
    void theAnswerComesBeforeTheForm() {
        receive("sodium-coco-sulfate");
        String body = answered("?without=sles-27&aim=CHANGE").body();
        assertThat(body.indexOf("1. With ")).isPositive().isLessThan(body.indexOf("id=\"without\""));
        assertThat(body)
                .contains("Asked: without Sodium laureth sulfate 27 % solution, the least change")
                .containsOnlyOnce("<form method=\"get\"");
        String wrong = desk.get(path() + "?active=much").body();
        assertThat(wrong).contains("id=\"active\"").doesNotContain("Asked: ");
    }

    @Test
    void whereTheShelfHasNoneItSaysWhatToBuy() {
        OpenDesk.Answer page = answered("?without=sles-27&aim=CHANGE");
        assertThat(page.body())
                .contains("None on your shelf", "With one of these bought it would work", "no price is known of them")
                .doesNotContain("% of Sodium laureth sulfate 27 % solution.<")
                .doesNotContain("anionic active matter at least 0 %");
        java.util.regex.Matcher take = java.util.regex.Pattern.compile("action=\"([^\"]*/take/1\\?[^\"]*)\"")
                .matcher(page.body());
        assertThat(take.find()).isTrue();
        assertThat(desk.post(take.group(1).replace("&amp;", "&"), Map.of()).status())
                .isEqualTo(303);
        FormulaVersion made =
                desk.ledger().products().newest(version.productId()).orElseThrow();
        assertThat(made.formula().lines())
                .anyMatch(line -> line.materialKey().equals("sles-70"))
                .noneMatch(line -> line.materialKey().equals("sles-27"));
        assertThat(made.why()).contains("with Sodium laureth sulfate 70 % paste bought");
    }

    @Test
    void aBandOfItsOwnAndAnotherDoseAreAskedBack() {
        OpenDesk.Answer page =
                answered("?aim=COST&own-anionic-active-matter=2&most-glycerin-99=3.1&least-glycerin-99=2.9");
        assertThat(page.body())
                .contains("name=\"own-anionic-active-matter\" type=\"text\" value=\"2\"", "name=\"most-glycerin-99\"")
                .contains("Anionic active matter goes from", "2.90");
        OpenDesk.Answer wrong = desk.get(path() + "?least-glycerin-99=5&most-glycerin-99=1");
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.body()).contains("The least must not be above the most.");
    }

    @Test
    void theReasonStandsOnTheDraft() {
        receive("sles-70");
        String query = "?without=sles-27&aim=CHANGE";
        answered(query);
        desk.post(path() + "/take/1" + query, Map.of());
        FormulaVersion made =
                desk.ledger().products().newest(version.productId()).orElseThrow();
        assertThat(made.why())
                .startsWith("Made anew from version " + version.number())
                .contains("without Sodium laureth sulfate 27 % solution", "With Sodium laureth sulfate 70 % paste");
        assertThat(desk.get("/products/" + made.productId() + "/versions/" + made.number())
                        .body())
                .contains("without Sodium laureth sulfate 27 % solution");
    }

    @Test
    void whatIsImpossibleIsNamed() {
        OpenDesk.Answer page = answered("?without=sles-27&active=0&water=0&family=0&most=3");
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
        assertThat(desk.get(draft).body())
                .contains(
                        draft + "/anew\"",
                        draft + "/anew?aim=COST\"",
                        draft + "/anew#use\"",
                        "I have no more of this",
                        "without=sles-27");
        FormulaVersion newest =
                desk.ledger().products().newest(version.productId()).orElseThrow();
        desk.ledger().products().keep(newest.productId(), newest.number(), newest.edit());
        assertThat(desk.get(draft).body()).contains("Make it cheaper", "Use up the shelf", "Make it anew");
        assertThat(desk.get("/products/" + version.productId() + "/versions/99/anew")
                        .status())
                .isEqualTo(404);
    }

    @Test
    void neitherOfTwoStaysAndTheReasonNamesBoth() {
        receive("sodium-coco-sulfate");
        receive("coco-betaine-30");
        String query = "?without=sles-27&also=cocamidopropyl-betaine-30&aim=CHANGE&family=20";
        OpenDesk.Answer page = answered(query);
        assertThat(page.body()).contains("1. With ");
        assertThat(page.body()).containsPattern("value=\"cocamidopropyl-betaine-30\" checked");
        assertThat(desk.post(path() + "/take/1" + query, Map.of()).status()).isEqualTo(303);
        FormulaVersion made =
                desk.ledger().products().newest(version.productId()).orElseThrow();
        assertThat(made.formula().lines())
                .noneMatch(line -> line.materialKey().equals("sles-27")
                        || line.materialKey().equals("cocamidopropyl-betaine-30"));
        assertThat(made.why()).contains("without Sodium laureth sulfate", " and Cocamidopropyl betaine");
    }

    @Test
    void whatIsGuaranteedIsSaidAndTheCardsThatMatterAreLinked() {
        OpenDesk.Answer page = answered("?aim=NATURAL");
        assertThat(page.body())
                .doesNotContain("This cannot be answered")
                .contains("% guaranteed</strong>", "; at most ", "<a href=\"/materials/sles-27\">");
    }
}
