package stillroom.desk.batches;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.material.Lot;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Grams;

/** From a line that is too little to weigh to a premix on the shelf and a plan that uses it. */
class PremixPagesTest {
    @TempDir
    Path folder = Path.of("");

    @SuppressWarnings("NullAway.Init")
    private LotionBench bench;

    private String plan = "";

    @BeforeEach
    void open() {
        bench = LotionBench.in(folder);
        long product = bench.ledger()
                .products()
                .add("Mist", Brief.of(ProductType.TONER), "")
                .id();
        bench.ledger()
                .products()
                .newVersion(
                        product,
                        Optional.empty(),
                        new Formula(List.of(new Phase(
                                "a",
                                "All",
                                List.of(
                                        new Line("w", LotionBench.WATER, new Amount.ToHundred(), ""),
                                        new Line("g", LotionBench.GLYCERIN, Amount.fixed("0.1"), "")),
                                List.of()))),
                        "first",
                        stillroom.desk.OpenDesk.NOW);
        plan = "/products/" + product + "/versions/1/plan";
    }

    @AfterEach
    void close() {
        bench.close();
    }

    private static String batchOf(Answer answer) {
        Matcher path = Pattern.compile("/batches/(\\d+)/bench").matcher(answer.location());
        assertThat(path.find()).as(answer.status() + " " + answer.location()).isTrue();
        return path.group(1);
    }

    @Test
    void oneClickMakesThePremixAndThePlanUsesItsLot() {
        String query = "by=mass&mass=500&balance=Kitchen+scale";
        assertThat(bench.get(plan + "?" + query).body()).contains("Make the premix of Glycerin");

        Answer begun = bench.post(
                plan + "/premix",
                Map.of("by", "mass", "mass", "500", "balance", "Kitchen scale", "line", "g", "who", "Ada"));
        long batch = Long.parseLong(batchOf(begun));
        Plan premix = bench.state(batch).plan().orElseThrow();
        bench.act(batch, Map.of("act", "ready", "newVessel", "Jar", "clean", "washed", "phase", "premix"));
        for (PlannedLine line : premix.lines()) {
            String lot = line.materialKey().equals(LotionBench.WATER) ? "W-1" : "G-soon";
            bench.weigh(batch, "Jar", line.lineId(), line.target().toString(), lot);
        }
        bench.act(batch, Map.of("act", "step", "vessel", "Jar", "step", "even", "doing", "Stirred"));
        assertThat(bench.get("/batches/" + batch + "/bench?vessel=Jar&do=done").body())
                .contains("Put it on the shelf");

        String page = bench.get("/batches/" + batch + "/premix").body();
        assertThat(page).contains("Premix of Glycerin", "As weighed, with twice its uncertainty", "Keeps until");
        Answer noDay = bench.post(
                "/batches/" + batch + "/premix",
                Map.of("code", "PMX-1", "keeps", "", "by", "Ada", "requestId", "request-one"));
        assertThat(noDay.status()).isEqualTo(422);
        Answer shelved = bench.post(
                "/batches/" + batch + "/premix",
                Map.of(
                        "code",
                        "PMX-1",
                        "keeps",
                        LotionBench.TODAY.plusDays(30).toString(),
                        "by",
                        "Ada",
                        "requestId",
                        "request-one"));
        assertThat(shelved.status()).isEqualTo(303);
        assertThat(shelved.location()).contains(plan, "weigh-g=PMX-1");
        Lot lot = bench.ledger().lots().lot("PMX-1").orElseThrow().lot();
        assertThat(lot.certificate().orElseThrow().strength()).isPresent();
        assertThat(bench.state(batch).inVessels().net().signum()).isZero();

        String with = bench.get(shelved.location()).body();
        assertThat(with).contains("From premix lot PMX-1", "Lot PMX-1:").doesNotContain("Make the premix of Glycerin");
        Map<String, String> form = new HashMap<>(Map.of(
                "by",
                "mass",
                "mass",
                "500",
                "balance",
                "Kitchen scale",
                "code",
                "M-1",
                "who",
                "Ada",
                "weigh-g",
                "PMX-1"));
        Matcher edit = Pattern.compile("name=\"edit\" value=\"(\\d+)\"").matcher(with);
        assertThat(edit.find()).isTrue();
        form.put("edit", edit.group(1));
        Answer mist = bench.post(plan, form);
        assertThat(mist.status()).isEqualTo(303);
        Plan used = bench.state(Long.parseLong(batchOf(mist))).plan().orElseThrow();
        assertThat(Grams.sum(used.lines().stream().map(PlannedLine::target).toList()))
                .isEqualTo(Grams.of("500"));
        assertThat(used.line("g").orElseThrow().materialKey()).isEqualTo(lot.materialKey());
        assertThat(used.line("g").orElseThrow().target()).isGreaterThan(Grams.of("2"));

        long made = Long.parseLong(batchOf(mist));
        bench.act(made, Map.of("act", "ready", "newVessel", "Pot", "clean", "washed", "phase", "a"));
        bench.weigh(made, "Pot", "w", used.line("w").orElseThrow().target().toString(), "W-1");
        bench.close();
        bench = LotionBench.later(folder, Duration.ofHours(90));
        Answer late = bench.weigh(
                made, "Pot", "g", used.line("g").orElseThrow().target().toString(), "PMX-1");
        assertThat(late.status()).isEqualTo(422);
        assertThat(late.body()).contains("PMX-1 (premix) stood 90 h, allowed are 72 h");
        bench.close();
        bench = LotionBench.later(folder, Duration.ZERO);
        assertThat(bench.weigh(
                                made,
                                "Pot",
                                "g",
                                used.line("g").orElseThrow().target().toString(),
                                "PMX-1")
                        .status())
                .isEqualTo(303);
        assertThat(bench.get("/batches/" + made + "/as-made").body())
                .contains("Judged by the certificates of the lots");
        String carried = bench.get("/batches/" + made + "/as-made/carry").body();
        assertThat(carried).contains("Glycerin", "q.s. to 100").doesNotContain("Premix of");
        bench.post("/batches/" + made + "/as-made/carry", Map.of());
        Formula next = bench.ledger()
                .products()
                .newest(bench.ledger().batches().batch(made).orElseThrow().productId())
                .orElseThrow()
                .formula();
        assertThat(next.line("g").orElseThrow()).satisfies(line -> {
            assertThat(line.materialKey()).isEqualTo(LotionBench.GLYCERIN);
            assertThat(((Amount.Fixed) line.amount()).percent().value()).isEqualByComparingTo("0.1");
        });
        assertThat(next.lines()).hasSize(2);
    }

    /**
     * 2 % of 1000 g are 20 g glycerin of 99.75 %, the middle of its card; lot G-soon has half of that and only 20 g, so
     * it brings what 10 g would; the other 10 g come from G-late, which is as its card: 30 g in place of 20 g.
     */
    @Test
    void sameActiveCountsEachLotThatIsTaken() {
        strength("G-soon", "49.875");
        strength("G-late", "99.75");
        bench.ledger().lots().countStock("G-soon", Grams.of("20"), "spilled", stillroom.desk.OpenDesk.NOW, "Ada");
        long product = bench.ledger()
                .products()
                .add("Gel", Brief.of(ProductType.TONER), "")
                .id();
        bench.ledger()
                .products()
                .newVersion(
                        product,
                        Optional.empty(),
                        new Formula(List.of(new Phase(
                                "a",
                                "All",
                                List.of(
                                        new Line("w", LotionBench.WATER, new Amount.ToHundred(), ""),
                                        new Line("g", LotionBench.GLYCERIN, Amount.fixed("2"), "")),
                                List.of()))),
                        "first",
                        stillroom.desk.OpenDesk.NOW);
        String path = "/products/" + product + "/versions/1/plan?by=mass&mass=1000&balance=Kitchen+scale";
        assertThat(bench.get(path).body())
                .contains("lot G-soon has 49.88 %, lot G-late has 99.75 %", "Lot G-soon: 20.0 g");
        assertThat(bench.get(path + "&active-g=same-active").body())
                .contains("Lot G-soon: 20.0 g", "Lot G-late: 10.0 g", ">30.0<");
    }

    private void strength(String code, String percent) {
        Lot lot = bench.ledger().lots().lot(code).orElseThrow().lot();
        stillroom.formulary.material.Strength card = bench.ledger()
                .materials()
                .book()
                .material(LotionBench.GLYCERIN)
                .orElseThrow()
                .strength()
                .orElseThrow();
        bench.ledger()
                .lots()
                .change(lot.with(
                        Optional.of(new stillroom.formulary.material.Certificate(
                                Optional.of(new stillroom.formulary.material.Strength(
                                        stillroom.formulary.quantity.PercentRange.of(percent, percent),
                                        card.basis(),
                                        card.of())),
                                Optional.empty(),
                                Optional.empty(),
                                List.of(),
                                "")),
                        Optional.empty()));
    }

    @Test
    void aLineThatCanBeWeighedHasNoPremix() {
        Answer refused = bench.post(
                plan + "/premix",
                Map.of("by", "mass", "mass", "50000", "balance", "Kitchen scale", "line", "g", "who", "Ada"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.body()).contains("can be weighed as it is");
        assertThat(bench.get("/batches/" + bench.begin("B-1") + "/premix").status())
                .isEqualTo(404);
    }

    @Test
    void aLotOfAnotherStrengthAsksForSameGramsOrSameActive() {
        String page = bench.get("/products/1/versions/1/plan?by=mass&mass=500").body();
        assertThat(page).doesNotContain("Same active matter");
        String lot = bench.get("/lots/A-1").body();
        Matcher seen = Pattern.compile("name=\"seen\" value=\"([^\"]+)\"").matcher(lot);
        assertThat(seen.find()).isTrue();
        Map<String, String> facts = new HashMap<>(
                Map.of("seen", seen.group(1), "state", "RELEASED", "strength", "84", "supplier", "", "note", ""));
        assertThat(bench.post("/lots/A-1", facts).body()).contains("active matter is not dry residue");
        facts.put("basis", "AS_ACID");
        facts.put("certificate", "C-17 of 2026-10-01");
        assertThat(bench.post("/lots/A-1", facts).status()).isEqualTo(303);
        assertThat(bench.get("/lots/A-1").body()).contains("value=\"84\"", "C-17 of 2026-10-01");
    }
}
