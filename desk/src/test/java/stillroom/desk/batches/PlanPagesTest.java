package stillroom.desk.batches;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Grams;

class PlanPagesTest {
    private static final String PLAN = "/products/1/versions/1/plan";

    @TempDir
    Path folder = Path.of("");

    @SuppressWarnings("NullAway.Init")
    private LotionBench bench;

    @BeforeEach
    void open() {
        bench = LotionBench.in(folder);
    }

    @AfterEach
    void close() {
        bench.close();
    }

    @Test
    void gramsStandAtOnceForStatedSize() {
        Answer answer = bench.get(PLAN + "?by=mass&mass=1000&balance=Kitchen+scale");

        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.body()).contains("stated: 1000 g", ">50.0<", "± 2.5 g", "Lot G-soon: 50.0 g");
    }

    @Test
    void sizeFromContainersDividesByTheLoss() {
        Answer answer = bench.get(PLAN
                + "?by=containers&containers=20&fill=50&fillUnit=ml&density=0.95&overfill=0.5&retained=30&loss=4"
                + "&balance=Kitchen+scale");

        // (20 x (50 ml x 0.95 g/ml + 0.5 g) + 30 g) / 0.96 = 1031.25 g, rounded up to 0.1 g
        assertThat(answer.body()).contains("20 × 48 g + 30 g aside", "1031.3 g", "Into each container");
    }

    @Test
    void fillInMillilitresAsksForTheMeasuredDensity() {
        Answer answer = bench.get(PLAN + "?by=containers&containers=20&fill=50&fillUnit=ml");

        assertThat(answer.body()).contains("needs the measured density").doesNotContain("Begin this batch");
    }

    @Test
    void badSizesAreSaidBesideTheirFieldsAndKept() {
        assertThat(bench.get(PLAN + "?by=mass&mass=-5").body())
                .contains("The batch size must lie between 0 and 1000000", "value=\"-5\"");
        assertThat(bench.get(PLAN + "?by=mass&mass=0").body()).contains("needs a mass above 0 g");
        assertThat(bench.get(PLAN + "?by=mass&mass=1O0").body()).contains("not a number that can be read");
        assertThat(bench.get(PLAN + "?by=mass&mass=NaN").body()).contains("not a number that can be read");
        assertThat(bench.get(PLAN + "?by=mass&mass=").body())
                .contains("The grams stand here as soon as")
                .doesNotContain("is missing");
        assertThat(bench.get(PLAN + "?by=containers&containers=2.5&fill=50&loss=200")
                        .body())
                .contains("must be a whole number", "Loss must lie between 0 and 50");
        assertThat(bench.get(PLAN + "?by=mass&mass=250,5").body()).contains("stated: 250.5 g");
        assertThat(bench.get(PLAN + "?by=mass&mass=250,5+g").body()).contains("stated: 250.5 g");
        assertThat(bench.get(PLAN + "?by=mass&mass=0,25kg").body()).contains("stated: 250 g");
        assertThat(bench.get(PLAN + "?by=mass&mass=5000+kg").body())
                .contains("The batch size must lie between 0 and 1000000");
        assertThat(bench.get(PLAN + "?by=mass&mass=250+mg").body()).contains("not a number that can be read");
    }

    @Test
    void shortagesGoOnTheShoppingListAndDoNotBlock() {
        Answer plan = bench.get(PLAN + "?by=mass&mass=1000");
        assertThat(plan.body()).contains("To buy", "Sunflower oil", "80 g");
        assertThat(plan.body())
                .contains("Only 40 g are booked in on the shelf; 120 g are needed, so 80 g are missing.");

        Answer list = bench.get(PLAN + "/shopping?by=mass&mass=1000");
        assertThat(list.status()).isEqualTo(200);
        assertThat(list.body()).contains("Shopping list", "Sunflower oil, high oleic, refined: 80 g");
        assertThat(plan.body()).contains("100 g in <a href=\"/lots\">quarantine</a>");
        assertThat(list.body()).contains("100 g in quarantine");

        assertThat(bench.begin("B-1")).isPositive();
    }

    @Test
    void roundingStaysWithinTheLawOrThePlanIsRefusedWithAWayOut() {
        // 0.5 % of 20 g is 0.1 g; Annex V, entry 1, leaves at most 0.59 % sodium benzoate in leave-on: no more than
        // 0.118 g, so that a balance with steps of 0.1 g that is off by one step would break the law.
        String coarse =
                bench.get(PLAN + "?by=mass&mass=20&balance=Kitchen+scale").body();
        assertThat(coarse).contains("Not to be worked like this", "not like this", "Make a batch of");

        Map<String, String> form = form("B-1", "20", bench.edit());
        form.put("balance", "Kitchen scale");
        Answer refused = bench.post(PLAN, form);
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.body()).contains("This plan should not be worked");
        assertThat(bench.get(PLAN + "?by=mass&mass=1000&balance=Kitchen+scale").body())
                .doesNotContain("Not to be worked like this");
    }

    @Test
    void beginningKeepsTheVersionAndLogsThePlan() {
        long batch = bench.begin("B-1");

        assertThat(bench.ledger().products().version(1, 1).orElseThrow().kept()).isTrue();
        Plan plan = bench.state(batch).plan().orElseThrow();
        assertThat(Grams.sum(plan.lines().stream().map(PlannedLine::target).toList()))
                .isEqualTo(Grams.of("500"));
        assertThat(bench.log(batch)).singleElement().satisfies(entry -> {
            assertThat(entry.by()).isEqualTo("Ada");
            assertThat(entry.event()).isInstanceOf(BatchEvent.Planned.class);
        });
        assertThat(bench.get("/batches/" + batch).body()).contains("B-1", "Planned: 500 g", "To the bench");
    }

    @Test
    void theSameFormTwiceBeginsOneBatch() {
        bench.begin("B-1");
        bench.begin("B-1");

        assertThat(bench.ledger().batches().unfinished()).hasSize(1);
    }

    @Test
    void takenCodeIsRefused() {
        long batch = bench.begin("B-1");
        bench.act(batch, Map.of("act", "note", "text", "begun"));

        Answer again = bench.post(PLAN, form("B-1", "500", bench.edit()));
        assertThat(again.status()).isEqualTo(422);
        assertThat(again.body()).contains("B-1 is taken by another batch");
    }

    @Test
    void staleFormulaIsShownAnewBeforeBeginning() {
        String edit = bench.edit();
        bench.ledger().products().saveDraft(1, 1, Integer.parseInt(edit), LotionBench.formula(), "saved elsewhere");

        Answer answer = bench.post(PLAN, form("B-1", "500", edit));
        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.body()).contains("The formula was changed since this plan was shown", "value=\"B-1\"");
        assertThat(bench.ledger().batches().unfinished()).isEmpty();
    }

    @Test
    void nameAndCodeAreNeeded() {
        Map<String, String> form = form("", "500", bench.edit());
        form.put("who", " ");

        Answer answer = bench.post(PLAN, form);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("The batch code is missing", "The name of who plans is missing");
    }

    @Test
    void withoutABalanceOnFileTheOneAtTheBenchIsAskedForAndKept() {
        bench.ledger().equipment().writeBalances(List.of());
        assertThat(bench.get(PLAN).body()).contains("No balance is on file yet", "Smallest step it shows");

        Map<String, String> form = form("B-1", "500", bench.edit());
        form.put("step", "0.5");
        form.put("maximum", "5000");
        assertThat(bench.post(PLAN, form).status()).isEqualTo(303);
        assertThat(bench.ledger().equipment().balances())
                .singleElement()
                .satisfies(balance -> assertThat(balance.step()).isEqualTo(Grams.of("0.5")));
    }

    @Test
    void unknownAddressesAreSaidInASentence() {
        assertThat(bench.get("/products/99/versions/1/plan").status()).isEqualTo(404);
        assertThat(bench.get("/products/1/versions/99/plan").body()).contains("This product has no version 99.");
        assertThat(bench.get("/products/x/versions/1/plan").status()).isEqualTo(404);
        assertThat(bench.get("/batches/99").body()).contains("There is no batch with this number.");
    }

    private static Map<String, String> form(String code, String mass, String edit) {
        return new HashMap<>(Map.of("by", "mass", "mass", mass, "code", code, "who", "Ada", "edit", edit));
    }
}
