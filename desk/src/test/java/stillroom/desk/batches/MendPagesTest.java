package stillroom.desk.batches;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchStage;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.quantity.Grams;

/** What goes wrong at the bench, and each way out of it taken on the page. */
class MendPagesTest {
    @TempDir
    Path folder = Path.of("");

    @SuppressWarnings("NullAway.Init")
    private LotionBench bench;

    private long batch;

    @BeforeEach
    void open() {
        bench = LotionBench.in(folder);
        batch = bench.begin("B-1");
        bench.readyBoth(batch);
        bench.weigh(batch, "Kettle", "l1", "391", "W-1");
    }

    @AfterEach
    void close() {
        bench.close();
    }

    private String screen(String query) {
        Answer answer = bench.get("/batches/" + batch + "/bench" + query);
        assertThat(answer.status()).isEqualTo(200);
        return answer.body();
    }

    private Answer act(String... fields) {
        Map<String, String> form = new HashMap<>();
        for (int i = 0; i < fields.length; i += 2) {
            form.put(fields[i], fields[i + 1]);
        }
        return bench.act(batch, form);
    }

    @Test
    void theLargerBatchIsTakenWithOneButtonAndTheTargetsFollow() {
        bench.weigh(batch, "Kettle", "l2", "30", "G-soon");
        assertThat(screen("?vessel=Kettle")).contains("name=\"act\" value=\"larger\"", "If it is kept");

        assertThat(act("act", "larger", "vessel", "Kettle", "line", "l2").status())
                .isEqualTo(303);

        Plan plan = bench.state(batch).plan().orElseThrow();
        assertThat(plan.batch()).isGreaterThan(Grams.of("560"));
        assertThat(plan.line("l2").orElseThrow().target()).isEqualTo(Grams.of("30"));
        assertThat(screen("?vessel=Kettle")).contains("g more").doesNotContain("g over");
        assertThat(screen("?vessel=Beaker")).doesNotContain("60.0 <small>g</small>");
        // Nothing is over any more, so the same way is closed.
        assertThat(act("act", "larger", "vessel", "Kettle", "line", "l2").body())
                .contains("not open any more");
    }

    /** Once the phases are combined, a second batch with less of it is planned with one button, and the two are joined. */
    @Test
    void aSecondBatchIsPlannedWithSoMuchLessAndTheTwoAreJoined() {
        bench.weigh(batch, "Kettle", "l2", "30", "G-soon");
        bench.weigh(batch, "Beaker", "l3", "60", "O-1");
        bench.weigh(batch, "Beaker", "l4", "20", "E-1");
        assertThat(screen("?vessel=Kettle")).doesNotContain("Plan the second batch");
        act("act", "combine", "from", "Beaker", "into", "Kettle");
        String way = found(screen("?vessel=Kettle"), "href=\"([^\"]+)\">Plan the second batch")
                .replace("&amp;", "&");
        String page = bench.get(way).body();
        assertThat(page).contains("to be blended with B-1", "stated: 495 g");
        assertThat(bench.get(way.replace("mass=495", "mass=50")).body()).contains("cannot hold so much less");

        Map<String, String> form = new HashMap<>(Map.of(
                "by",
                "mass",
                "mass",
                "495",
                "blend",
                "B-1",
                "lessLine",
                "l2",
                "less",
                "5",
                "code",
                "B-2",
                "who",
                "Ada"));
        form.put("edit", found(page, "name=\"edit\" value=\"(\\d+)\""));
        assertThat(bench.post("/products/1/versions/1/plan", form).status()).isEqualTo(303);
        long second = bench.ledger().batches().byCode("B-2").orElseThrow().id();
        Plan less = bench.state(second).plan().orElseThrow();
        assertThat(less.line("l2").orElseThrow().target()).isEqualTo(Grams.of("20"));
        assertThat(less.line("l3").orElseThrow().target()).isEqualTo(Grams.of("60"));

        bench.act(second, Map.of("act", "ready", "newVessel", "Pot", "clean", "washed", "phase", "water"));
        bench.weigh(second, "Pot", "l2", "20", "G-soon");
        assertThat(bench.get("/batches/" + second).body()).contains("is to be blended with B-1", "Join the two");
        assertThat(bench.get("/batches/" + batch).body()).contains("is to be blended with B-2");
        String join = bench.get("/batches/" + second + "/bulk?with=B-1").body();
        assertThat(join).contains("value=\"20\"");
        assertThat(found(join, "<option value=\"(B-1/Kettle)\" selected")).isEqualTo("B-1/Kettle");
        Answer joined = bench.post(
                "/batches/" + second + "/bulk",
                Map.of("vessel", "Pot", "mass", "20", "to", "B-1/Kettle", "by", "Ada", "requestId", "join-one"));
        assertThat(joined.status()).isEqualTo(303);
        assertThat(bench.get("/batches/" + second).body()).doesNotContain("Join the two");
        assertThat(bench.state(batch).vessel("Kettle").orElseThrow().mixture().of(LotionBench.GLYCERIN))
                .isEqualTo(Grams.of("50"));
    }

    private static String found(String page, String pattern) {
        java.util.regex.Matcher matcher =
                java.util.regex.Pattern.compile(pattern).matcher(page);
        assertThat(matcher.find()).as(pattern).isTrue();
        return matcher.group(1);
    }

    @Test
    void aScaledPhaseAsksForItsSurplusToBeThrownAway() {
        bench.weigh(batch, "Kettle", "l2", "30", "G-soon");
        act("act", "step", "vessel", "Kettle", "step", "s1", "doing", "Heated", "celsius", "75");
        assertThat(act("act", "scale", "vessel", "Kettle", "line", "l2").status())
                .isEqualTo(303);

        Grams more =
                bench.state(batch).plan().orElseThrow().line("l1").orElseThrow().target();
        bench.weigh(batch, "Kettle", "l1", more.minus(Grams.of("391")).toString(), "W-1");
        String screen = screen("?vessel=Kettle");
        assertThat(screen).contains("Throw away", "of Water phase", "surplus of phase water");
    }

    @Test
    void givingUpSaysWhatItCostsAndRejects() {
        bench.weigh(batch, "Kettle", "l2", "30", "G-soon");
        assertThat(screen("?do=giveup&vessel=Kettle"))
                .contains("421 g would be lost", "without the price of", "The batch is rejected");
        assertThat(act("act", "giveup", "vessel", "Kettle", "reason", "").body())
                .contains("The reason is missing");
        assertThat(act("act", "giveup", "vessel", "Kettle", "reason", "wrong bottle")
                        .status())
                .isEqualTo(303);
        assertThat(bench.state(batch).stage()).isEqualTo(BatchStage.REJECTED);
    }

    @Test
    void anotherMaterialIsPouredOnPurposeOrByMistake() {
        assertThat(screen("?do=instead&vessel=Kettle&line=l2")).contains("The line asks for Glycerin", "By mistake");
        Answer silent = act(
                "act",
                "instead",
                "do",
                "instead",
                "vessel",
                "Kettle",
                "line",
                "l2",
                "material",
                LotionBench.OIL,
                "mass",
                "25",
                "how",
                "purpose",
                "balance",
                "Kitchen scale",
                "note",
                "");
        assertThat(silent.status()).isEqualTo(422);
        assertThat(silent.body()).contains("How that came about is missing");

        Answer stray = act(
                "act",
                "instead",
                "vessel",
                "Kettle",
                "line",
                "l2",
                "material",
                LotionBench.OIL,
                "mass",
                "5",
                "how",
                "mistake",
                "balance",
                "Kitchen scale",
                "lot",
                "O-1",
                "note",
                "took the wrong bottle");
        assertThat(stray.status()).isEqualTo(303);
        assertThat(bench.get(stray.location()).body())
                .contains("is in by mistake", "Take it back", "See what it is now");
        assertThat(bench.state(batch).poured("l2")).isEqualTo(Grams.ZERO);

        act(
                "act",
                "instead",
                "vessel",
                "Kettle",
                "line",
                "l2",
                "material",
                LotionBench.OIL,
                "mass",
                "25",
                "how",
                "purpose",
                "balance",
                "Kitchen scale",
                "note",
                "out of glycerin");
        assertThat(bench.state(batch).poured("l2")).isEqualTo(Grams.of("25"));
        assertThat(bench.get("/batches/" + batch + "/as-made").body()).contains("beyond the plan");
    }

    @Test
    void lotsAreNamedAfterwardsAndStockFollows() {
        act("act", "weigh", "vessel", "Kettle", "line", "l2", "mass", "25", "lot", "", "balance", "Kitchen scale");
        int entry = bench.log(batch).size();
        assertThat(screen("?do=lots&vessel=Kettle&entry=" + entry)).contains("From which lots did entry " + entry);

        Answer wrong = act(
                "act", "lots", "do", "lots", "vessel", "Kettle", "entry", "" + entry, "lot1", "G-soon", "part1", "30");
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.body()).contains("The parts are 30 g together, the weighing was 25 g.");
        Answer expired = act("act", "lots", "do", "lots", "vessel", "Kettle", "entry", "" + entry, "lot1", "G-old");
        assertThat(expired.body()).contains("Lot G-old expired on");
        Answer other = act("act", "lots", "do", "lots", "vessel", "Kettle", "entry", "" + entry, "lot1", "O-1");
        assertThat(other.body()).contains("Lot O-1 is another material.");

        Answer named = act(
                "act",
                "lots",
                "vessel",
                "Kettle",
                "entry",
                "" + entry,
                "lot1",
                "G-soon",
                "part1",
                "10",
                "lot2",
                "G-late");
        assertThat(named.status()).isEqualTo(303);
        assertThat(bench.ledger().lots().lot("G-soon").orElseThrow().onHand()).isEqualTo(Grams.of("490"));
        assertThat(bench.ledger().lots().lot("G-late").orElseThrow().onHand()).isEqualTo(Grams.of("485"));
    }

    @Test
    void waterThatEvaporatedIsReturned() {
        bench.weigh(batch, "Kettle", "l2", "25", "G-soon");
        act("act", "gross", "vessel", "Kettle", "gross", "1205");

        String gross = screen("?do=gross&vessel=Kettle");
        assertThat(gross).contains("dose=11");
        assertThat(screen("?do=correct&vessel=Kettle&purpose=CORRECTION_WATER&material=water-purified&dose=11"))
                .contains("So much evaporated: return <strong>11 g</strong>");
        act(
                "act",
                "weigh",
                "vessel",
                "Kettle",
                "material",
                "water-purified",
                "purpose",
                "CORRECTION_WATER",
                "mass",
                "11",
                "lot",
                "W-1",
                "balance",
                "Kitchen scale");
        assertThat(bench.state(batch).inVessels().net()).isEqualTo(Grams.of("416"));
        assertThat(screen("?do=gross&vessel=Kettle")).doesNotContain("dose=11");
    }

    @Test
    void aPhaseWithoutAVesselIsGivenToOneInUseWithOneButton() {
        long other = bench.begin("B-2");
        bench.act(
                other,
                Map.of("act", "ready", "newVessel", "Pot", "capacity", "100", "clean", "washed", "phase", "water"));
        String page =
                bench.get("/batches/" + other + "/bench?do=ready&step=oil").body();
        assertThat(page)
                .contains("this phase 80 g, the whole batch 500 g", "Into Pot", "too little for what is planned");

        bench.act(other, Map.of("act", "serve", "into", "Pot", "phase", "oil"));
        assertThat(bench.state(other).vessel("Pot").orElseThrow().phases()).containsExactly("water", "oil");
    }

    @Test
    void beginningLandsAtTheBench() {
        Map<String, String> form = new HashMap<>(Map.of("by", "mass", "mass", "500", "code", "B-9", "who", "Ada"));
        form.put("edit", bench.edit());
        Answer begun = bench.post("/products/1/versions/1/plan", form);
        assertThat(begun.location()).matches("/batches/\\d+/bench\\?did=planned");
        assertThat(Optional.of(bench.log(batch).get(0).event())).containsInstanceOf(BatchEvent.Planned.class);
    }

    @Test
    void aWrongOrExpiredBottleIsStoppedBeforeItIsPoured() {
        String wrong = screen("?do=weigh&vessel=Kettle&line=l2&scan=O-1");
        assertThat(wrong)
                .contains("Stop: lot O-1 is Sunflower oil", "Nothing is poured until the right bottle is in hand")
                .doesNotContain("Poured, as the balance shows it");
        assertThat(screen("?do=weigh&vessel=Kettle&line=l2&scan=XYZ")).contains("Stop: no lot XYZ");
        assertThat(screen("?do=weigh&vessel=Kettle&line=l2&scan=G-old"))
                .contains("Stop: lot G-old expired on", "Why this lot is used all the same")
                .contains("value=\"G-old\" data-doubt=\"expired\" selected");
        assertThat(screen("?do=weigh&vessel=Kettle&line=l2&scan=G-late"))
                .contains("Lot G-late is right; lot G-soon expires sooner.");
        assertThat(act(
                                "act",
                                "weigh",
                                "vessel",
                                "Kettle",
                                "line",
                                "l2",
                                "mass",
                                "25",
                                "lot",
                                "G-old",
                                "balance",
                                "Kitchen scale")
                        .status())
                .isEqualTo(422);
    }

    @Test
    void theBottlesLabelIsPrinted() {
        Answer label = bench.get("/lots/G-soon/label.pdf");
        assertThat(label.status()).isEqualTo(200);
        assertThat(label.body()).startsWith("%PDF");
    }

    @Test
    void aClockThatGoesBackLosesNothing() {
        bench.weigh(batch, "Kettle", "l2", "25", "G-soon");
        int entry = bench.log(batch).size();
        bench.close();
        bench = LotionBench.later(folder, java.time.Duration.ofHours(-30));

        assertThat(act("act", "again", "entry", "" + entry, "shown", "25").status())
                .isEqualTo(303);
        assertThat(bench.state(batch).check(bench.state(batch).pours().get(1)).kind())
                .as("a second look before the first is none")
                .isEqualTo(stillroom.formulary.batch.PourCheck.Kind.NOT_CHECKED);
        bench.weigh(batch, "Beaker", "l3", "60", "O-1");
        assertThat(bench.state(batch).poured("l3")).isEqualTo(Grams.of("60"));
        for (String path : new String[] {"", "/bench", "/as-made", "/fill", "/ph"}) {
            assertThat(bench.get("/batches/" + batch + path).status()).as(path).isEqualTo(200);
        }
        assertThat(bench.get("/").status()).isEqualTo(200);
        assertThat(bench.ledger().batches().firstAltered(batch)).isEmpty();
    }

    @Test
    void theBalanceThatDoesNotBearTheVesselIsSaid() {
        long heavy = bench.begin("B-3");
        bench.act(
                heavy,
                Map.of("act", "ready", "newVessel", "Cauldron", "tare", "2900", "clean", "washed", "phase", "water"));
        assertThat(bench.get("/batches/" + heavy + "/bench?do=weigh&vessel=Cauldron&line=l1")
                        .body())
                .contains("With Cauldron on it, Kitchen scale would show");
    }

    @Test
    void tolerancesAreTheMakers() {
        assertThat(bench.get("/workshop/tolerances").body()).contains("value=\"2\"", "value=\"5\"", "value=\"10\"");
        Map<String, String> form =
                new HashMap<>(Map.of("narrow", "2", "usual", "3", "wide", "10", "own", "Nonsense = 3"));
        assertThat(bench.post("/workshop/tolerances", form).body()).contains("No material is called");
        form.put("own", LotionBench.GLYCERIN + " = 1");
        assertThat(bench.post("/workshop/tolerances", form).status()).isEqualTo(303);
        assertThat(bench.get("/products/1/versions/1/plan?by=mass&mass=1000&balance=Kitchen+scale")
                        .body())
                .contains("± 0.5 g", "± 3.6 g");
    }
}
