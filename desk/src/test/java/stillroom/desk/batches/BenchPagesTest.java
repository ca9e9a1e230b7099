package stillroom.desk.batches;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.batch.BatchEvent.Poured;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.batch.BatchStage;
import stillroom.formulary.batch.PourCheck;
import stillroom.formulary.quantity.Grams;

class BenchPagesTest {
    @TempDir
    Path folder = Path.of("");

    @SuppressWarnings("NullAway.Init")
    private LotionBench bench;

    private long batch;

    @BeforeEach
    void open() {
        bench = LotionBench.in(folder);
        batch = bench.begin("B-1");
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

    @Test
    void aVesselIsAskedForFirst() {
        assertThat(screen("")).contains("Make a vessel ready for Water phase");

        assertThat(bench.act(batch, Map.of("act", "ready", "newVessel", "Kettle", "clean", "", "tare", "-1"))
                        .body())
                .contains("How it was cleaned is missing", "The empty weight must lie between 0");
        assertThat(bench.state(batch).vessels()).isEmpty();
    }

    @Test
    void eachVesselShowsItsOwnNextAction() {
        bench.readyBoth(batch);

        String screen = screen("?vessel=Kettle");
        assertThat(screen)
                .contains("Weigh 391 g Water, purified", "Weigh 60 g Sunflower oil", "391.0 <small>g</small>");
        assertThat(screen("?vessel=Beaker")).contains("Weigh into Beaker", "60.0 <small>g</small>");
    }

    @Test
    void severalPoursFillOneLineAndTheNextActionComesUp() {
        bench.readyBoth(batch);

        Answer first = bench.weigh(batch, "Kettle", "l1", "300", "W-1");
        assertThat(first.status()).isEqualTo(303);
        assertThat(first.location()).contains("do=weigh", "line=l1");
        assertThat(screen("?vessel=Kettle")).contains("91.0 <small>g more</small>", "300.0 g are in, of 391.0");

        Answer second = bench.weigh(batch, "Kettle", "l1", "91", "W-1");
        assertThat(second.location()).doesNotContain("line=l1");
        assertThat(screen("?vessel=Kettle"))
                .contains("Weigh into Kettle", "Glycerin, vegetable", "G-soon · 500 g by the book");
        assertThat(bench.ledger().lots().stock("W-1").orElseThrow().onHand()).isEqualTo(Grams.of("4609"));
    }

    @Test
    void weightsThatCannotBeAreRefusedBesideTheFieldAndNothingIsStored() {
        bench.readyBoth(batch);
        int before = bench.log(batch).size();

        assertThat(refused("-5")).contains("must lie between 0", "value=\"-5\"");
        assertThat(refused("0")).contains("0 g is no weighing.");
        assertThat(refused("4000")).contains("above the maximum of Kitchen scale (3000 g)");
        assertThat(refused("12.3.4")).contains("not a number that can be read");
        assertThat(refused("")).contains("The weight is missing");
        assertThat(bench.log(batch)).hasSize(before);
    }

    private String refused(String mass) {
        Answer answer = bench.weigh(batch, "Kettle", "l1", mass, "W-1");
        assertThat(answer.status()).isEqualTo(422);
        return answer.body();
    }

    @Test
    void doubtfulLotsNeedAReasonAndUnbookedOnesNone() {
        bench.readyBoth(batch);

        Answer expired = bench.weigh(batch, "Kettle", "l2", "25", "G-old");
        assertThat(expired.status()).isEqualTo(422);
        assertThat(expired.body()).contains("G-old expired on 2026-11-24");
        Answer reasoned = bench.act(
                batch,
                Map.of(
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
                        "Kitchen scale",
                        "note",
                        "looks and smells right"));
        assertThat(reasoned.status()).isEqualTo(303);

        assertThat(bench.weigh(batch, "Beaker", "l3", "60", "").status()).isEqualTo(303);
        assertThat(screen("?vessel=Beaker")).contains("(lot not booked)");
        assertThat(bench.weigh(batch, "Beaker", "l4", "20", "G-soon").body()).contains("G-soon is another material");
    }

    /** The only lot of the preservative stands in quarantine: it is proposed all the same, so that a pour without a word is refused. */
    @Test
    void aLotInQuarantineIsProposedBeforeNoLotAtAll() {
        bench.readyBoth(batch);

        assertThat(screen("?do=weigh&vessel=Kettle&line=l5"))
                .containsPattern("<option value=\"P-1\" data-doubt=\"in quarantine\" selected>");
    }

    @Test
    void aScanStandsInTheLogWithItsPour() {
        bench.readyBoth(batch);
        assertThat(screen("?do=weigh&vessel=Kettle&line=l2&scan=G-soon"))
                .contains("Lot G-soon is right", "name=\"scanned\" value=\"G-soon\"");
        for (String lot : new String[] {"G-soon", "G-late"}) {
            Map<String, String> pour = new HashMap<>(Map.of(
                    "act", "weigh", "vessel", "Kettle", "line", "l2", "mass", "12", "lot", lot, "scanned", "G-soon"));
            pour.put("balance", "Kitchen scale");
            assertThat(bench.act(batch, pour).status()).isEqualTo(303);
        }
        assertThat(bench.get("/batches/" + batch).body())
                .contains("(lot G-soon, scanned)", "(lot G-late)")
                .doesNotContain("G-late, scanned");
    }

    @Test
    void whatDoesNotBearTheHeatOfTheVesselNeedsAReason() {
        bench.readyBoth(batch);
        bench.act(batch, Map.of("act", "read", "kind", "TEMPERATURE", "vessel", "Kettle", "value", "75"));
        Map<String, String> urea = Map.of(
                "act",
                "weigh",
                "do",
                "correct",
                "vessel",
                "Kettle",
                "material",
                "urea",
                "purpose",
                "CORRECTION_OTHER",
                "mass",
                "5",
                "balance",
                "Kitchen scale");
        Answer hot = bench.act(batch, urea);
        assertThat(hot.status()).isEqualTo(422);
        assertThat(hot.body()).contains("Kettle was last seen at 75 °C, and this bears 40 °C", "note-problem");

        Map<String, String> reasoned = new HashMap<>(urea);
        reasoned.put("note", "a trial of what the heat does to it");
        assertThat(bench.act(batch, reasoned).status()).isEqualTo(303);
        bench.act(batch, Map.of("act", "read", "kind", "TEMPERATURE", "vessel", "Kettle", "value", "38"));
        assertThat(bench.act(batch, urea).status()).isEqualTo(303);
    }

    @Test
    void theBookNeverBlocksTheHand() {
        bench.readyBoth(batch);

        assertThat(bench.weigh(batch, "Beaker", "l3", "60", "O-1").status()).isEqualTo(303);
        assertThat(bench.ledger().lots().stock("O-1").orElseThrow().onHand()).isEqualTo(Grams.of("-20"));
    }

    @Test
    void theSameRequestTwiceIsWrittenOnce() {
        bench.readyBoth(batch);
        Map<String, String> form = Map.of(
                "requestId",
                "11111111-2222-3333-4444-555555555555",
                "act",
                "weigh",
                "vessel",
                "Kettle",
                "line",
                "l1",
                "mass",
                "391",
                "lot",
                "W-1",
                "balance",
                "Kitchen scale",
                "seen",
                "3");

        assertThat(bench.act(batch, form).status()).isEqualTo(303);
        assertThat(bench.act(batch, form).status()).isEqualTo(303);
        assertThat(bench.state(batch).pours()).hasSize(1);
    }

    @Test
    void twoTabletsOnOneLineAreWarned() {
        bench.readyBoth(batch);
        bench.weigh(batch, "Kettle", "l1", "391", "W-1");
        Map<String, String> form = Map.of(
                "act",
                "weigh",
                "do",
                "weigh",
                "vessel",
                "Kettle",
                "line",
                "l1",
                "mass",
                "390",
                "lot",
                "W-1",
                "balance",
                "Kitchen scale",
                "seen",
                "3");

        Answer second = bench.act(batch, form);
        assertThat(second.status()).isEqualTo(409);
        assertThat(second.body()).contains("Meanwhile 391 g of this were written down from elsewhere", "value=\"390\"");
        assertThat(bench.state(batch).pours()).hasSize(1);
    }

    @Test
    void anOverPourIsSettledByTakingBackOrByAReason() {
        bench.readyBoth(batch);
        bench.weigh(batch, "Kettle", "l1", "391", "W-1");
        bench.weigh(batch, "Kettle", "l2", "30", "G-soon");
        assertThat(screen("?vessel=Kettle"))
                .contains("5.0 <small>g over</small>", "Take back 5 g", "Make the batch larger");

        assertThat(bench.act(
                                batch,
                                Map.of(
                                        "act",
                                        "back",
                                        "vessel",
                                        "Kettle",
                                        "line",
                                        "l2",
                                        "material",
                                        LotionBench.GLYCERIN,
                                        "lot",
                                        "G-soon",
                                        "mass",
                                        "3",
                                        "balance",
                                        "Kitchen scale"))
                        .status())
                .isEqualTo(303);
        assertThat(bench.state(batch).poured("l2")).isEqualTo(Grams.of("27"));
        assertThat(bench.act(batch, Map.of("act", "accept", "line", "l2", "reason", ""))
                        .body())
                .contains("The reason is missing");
        bench.act(batch, Map.of("act", "accept", "line", "l2", "reason", "a little more humectant does no harm"));
        assertThat(screen("?vessel=Kettle"))
                .contains("Heat the water phase", "75 <small>°C</small>", "gloves and goggles")
                .contains("Glycerin, vegetable, 99.5 % stays as it is: a little more humectant does no harm");
    }

    @Test
    void timersRunOnEveryPageAndOverARestart() {
        bench.readyBoth(batch);
        bench.act(batch, Map.of("act", "timer", "vessel", "Beaker", "timerMinutes", "15", "label", "Melt"));
        assertThat(bench.get("/batches").body()).contains("data-until=\"2026-11-25T09:45:00Z\"", "Melt");

        bench.close();
        bench = LotionBench.later(folder, Duration.ofMinutes(5));
        assertThat(bench.get("/").body()).contains("data-until=\"2026-11-25T09:45:00Z\"");
        String timer = bench.state(batch).timers().get(0).event().timer();
        assertThat(bench.act(batch, Map.of("act", "stop", "timer", timer, "vessel", "Beaker"))
                        .status())
                .isEqualTo(303);
        assertThat(bench.get("/").body()).doesNotContain("data-until");
        assertThat(bench.act(batch, Map.of("act", "stop", "timer", timer)).body())
                .contains("No such timer is running.");
    }

    @Test
    void farOverTheStrikingComesFirstAndTotalsStandApartFromAdditions() {
        bench.readyBoth(batch);
        bench.weigh(batch, "Kettle", "l1", "391", "W-1");
        bench.weigh(batch, "Kettle", "l2", "52", "G-soon");
        int entry = bench.log(batch).size();
        String screen = screen("?vessel=Kettle");
        assertThat(screen)
                .contains("Typed it wrong?", "Entry " + entry + " says 52 g.", ">Strike this entry</a>")
                .contains("do=strike&amp;vessel=Kettle&amp;entry=" + entry)
                .contains("g instead of 500 g, with every line within its tolerance.")
                .contains("To be added for it, what is still planned included:");
        assertThat(screen.indexOf("Typed it wrong?")).isLessThan(screen.indexOf("Take back 27 g"));
    }

    @Test
    void aFinishedVesselIsPutWhereItIsWaitedFor() {
        bench.readyBoth(batch);
        bench.weigh(batch, "Beaker", "l3", "60", "O-1");
        bench.weigh(batch, "Beaker", "l4", "20", "E-1");
        bench.act(batch, Map.of("act", "step", "vessel", "Beaker", "step", "s2", "doing", "Melted"));
        assertThat(screen("?vessel=Beaker")).contains("<span class=\"vessel-next\">Wait for Kettle</span>");

        bench.weigh(batch, "Kettle", "l1", "391", "W-1");
        bench.weigh(batch, "Kettle", "l2", "25", "G-soon");
        bench.act(batch, Map.of("act", "step", "vessel", "Kettle", "step", "s1", "doing", "Heated", "celsius", "75"));
        assertThat(screen("?vessel=Beaker"))
                .contains("Put Beaker into Kettle", "No temperature of Beaker is logged.", "Combined, write it down")
                .doesNotContain("Both are at their temperature");
    }

    @Test
    void aQsFigureFarOffIsAskedForAgain() {
        bench.readyBoth(batch);
        Answer swapped = bench.weigh(batch, "Kettle", "l1", "319", "W-1");
        assertThat(swapped.location()).contains("did=logged");
        assertThat(bench.weigh(batch, "Kettle", "l1", "63", "W-1").location()).contains("did=check");
        assertThat(screen("?vessel=Kettle&did=check")).contains("more than 2 % off what this line asks");
        assertThat(screen("?do=weigh&vessel=Kettle&line=l1"))
                .contains("Within the wide tolerance of q.s., but 9.0 g short: check the figure.")
                .contains("data-check=\"7.82\"");
        assertThat(bench.weigh(batch, "Kettle", "l1", "5", "W-1").location()).contains("did=logged");
        assertThat(screen("?do=weigh&vessel=Kettle&line=l2")).doesNotContain("data-check");
    }

    @Test
    void loadingAgainAfterAStrikingShowsWhatComesNext() throws Exception {
        bench.readyBoth(batch);
        bench.weigh(batch, "Kettle", "l1", "391", "W-1");
        String entry = Integer.toString(bench.log(batch).size());
        bench.act(batch, Map.of("act", "strike", "entry", entry, "reason", "wrong vessel"));
        assertThat(screen("?do=strike&vessel=Kettle&entry=" + entry))
                .contains("Weigh into Kettle")
                .doesNotContain(">Strike entry " + entry + "<", "Why it is not true");

        HttpRequest swapped = HttpRequest.newBuilder(URI.create(
                        bench.desk().address() + "/batches/" + batch + "/bench?vessel=Big%20kettle&did=struck"))
                .header("HX-Request", "true")
                .build();
        assertThat(HttpClient.newHttpClient()
                        .send(swapped, HttpResponse.BodyHandlers.discarding())
                        .headers()
                        .firstValue("HX-Replace-Url"))
                .contains("/batches/" + batch + "/bench?vessel=Big+kettle");
    }

    @Test
    void oneButtonIsMarkedAsTheNextAction() {
        bench.readyBoth(batch);
        bench.weigh(batch, "Kettle", "l1", "391", "W-1");
        bench.weigh(batch, "Kettle", "l2", "25", "G-soon");
        String step = screen("?vessel=Kettle");
        assertThat(step.split("aria-current=\"step\"", -1)).hasSize(2);
        String ways = step.substring(step.indexOf("ways-title"));
        assertThat(ways).contains("do=combine").doesNotContain("aria-current=\"true\"");
        assertThat(screen("?vessel=Kettle&do=note")).contains("do=note&amp;vessel=Kettle\" aria-current=\"true\"");
    }

    @Test
    void afterTheDecisionOnlyNotesAndReadingsAreOffered() {
        bench.readyBoth(batch);
        bench.weigh(batch, "Kettle", "l1", "391", "W-1");
        bench.post(
                "/batches/" + batch + "/fill",
                Map.of("requestId", "reject-0001", "act", "reject", "reason", "smells", "by", "Ada"));
        String screen = screen("?do=weigh&vessel=Kettle&line=l2");
        assertThat(screen)
                .contains("The batch is rejected", "Only notes and readings are written down now.")
                .doesNotContain("do=correct", "do=rest", "Poured, as the balance shows it");
        assertThat(screen("?do=note")).contains("Write a note");
        assertThat(bench.act(batch, Map.of("act", "note", "text", "poured away"))
                        .status())
                .isEqualTo(303);
    }

    @Test
    void aTimerLeadsToWhereItIsStoppedAlsoWithoutAVessel() {
        bench.readyBoth(batch);
        bench.act(batch, Map.of("act", "timer", "vessel", "Beaker", "timerMinutes", "15", "label", "Melt"));
        bench.act(batch, Map.of("act", "timer", "vessel", "", "timerMinutes", "20", "label", "Oven"));
        String timer = bench.state(batch).timers().get(0).event().timer();
        assertThat(bench.get("/materials").body())
                .contains("href=\"/batches/" + batch + "/bench?vessel=Beaker#" + timer + "\"");
        assertThat(screen("?vessel=Kettle"))
                .contains("id=\"" + timer + "\"", "Timers without a vessel in use", "Stop the timer Oven");

        bench.act(batch, Map.of("act", "combine", "from", "Beaker", "into", "Kettle"));
        assertThat(screen("")).doesNotContain("Stop the timer Melt").contains("Stop the timer Oven");
        String oven = bench.state(batch).timers().get(0).event().timer();
        bench.act(batch, Map.of("act", "stop", "timer", oven));
        assertThat(screen("")).doesNotContain("Stop the timer");
    }

    @Test
    void strikingKeepsTheEntryAndTakesItOutOfTheCount() {
        bench.readyBoth(batch);
        bench.weigh(batch, "Kettle", "l1", "391", "W-1");
        int entry = bench.log(batch).size();
        assertThat(screen("?do=strike&vessel=Kettle&entry=" + entry)).contains("Strike entry " + entry, "391 g Water");

        bench.act(batch, Map.of("act", "strike", "entry", Integer.toString(entry), "reason", "wrong vessel"));
        assertThat(bench.state(batch).poured("l1")).isEqualTo(Grams.ZERO);
        assertThat(bench.get("/batches/" + batch).body()).contains("class=\"struck\"", "Struck: wrong vessel (Ada)");
        assertThat(bench.act(batch, Map.of("act", "strike", "entry", "99", "reason", "no"))
                        .body())
                .contains("The log has no such entry.");
    }

    @Test
    void readingAgainAfterAMinuteIsSelfChecked() {
        bench.readyBoth(batch);
        bench.weigh(batch, "Kettle", "l1", "391", "W-1");
        String entry = Integer.toString(bench.log(batch).size());
        assertThat(screen("?do=again&entry=" + entry)).contains("Less than a minute has passed");

        bench.close();
        bench = LotionBench.later(folder, Duration.ofSeconds(75));
        bench.act(batch, Map.of("act", "again", "entry", entry, "shown", "391"));
        assertThat(bench.state(batch).check(bench.state(batch).pours().get(0)).kind())
                .isEqualTo(PourCheck.Kind.SELF_CHECKED);
        assertThat(bench.get("/batches/" + batch).body()).contains("self-checked");
    }

    @Test
    void whoPoursIsRememberedAndCannotCheckAtTheSameMoment() {
        bench.readyBoth(batch);
        assertThat(bench.act(
                                batch,
                                Map.of(
                                        "act",
                                        "weigh",
                                        "vessel",
                                        "Kettle",
                                        "line",
                                        "l1",
                                        "mass",
                                        "391",
                                        "lot",
                                        "W-1",
                                        "balance",
                                        "Kitchen scale",
                                        "by",
                                        "Ben",
                                        "checkedBy",
                                        "ben"))
                        .body())
                .contains("Who pours cannot check at the same moment");
        bench.act(
                batch,
                Map.of(
                        "act",
                        "weigh",
                        "vessel",
                        "Kettle",
                        "line",
                        "l1",
                        "mass",
                        "391",
                        "lot",
                        "W-1",
                        "balance",
                        "Kitchen scale",
                        "by",
                        "Ben",
                        "checkedBy",
                        "Ada"));
        assertThat(screen("?vessel=Kettle")).contains("value=\"Ben\"", "value=\"Ada\"", "checked by Ada");
    }

    @Test
    void readingsKeepTheirConditions() {
        bench.readyBoth(batch);
        bench.act(
                batch,
                Map.of(
                        "act",
                        "read",
                        "kind",
                        "PH",
                        "vessel",
                        "Kettle",
                        "value",
                        "5,2",
                        "measured",
                        "dilution",
                        "dilution",
                        "10",
                        "sampleCelsius",
                        "21.5",
                        "minutesToStable",
                        "2",
                        "electrode",
                        "electrode 1"));
        assertThat(bench.get("/batches/" + batch).body())
                .contains(
                        "measured: 10 % in water",
                        "sample temperature: 21.5 °C", "data-low=\"4.8\"", "data-values=\"5.2\"");

        assertThat(bench.act(batch, Map.of("act", "read", "kind", "PH", "value", "15", "vessel", "Kettle"))
                        .body())
                .contains("The pH must lie between 0 and 14");
        assertThat(bench.act(batch, Map.of("act", "read", "kind", "APPEARANCE", "vessel", "Kettle", "words", ""))
                        .body())
                .contains("Give the figure that was read, or words.");
        assertThat(screen("?do=read&kind=VISCOSITY&vessel=Kettle")).contains("Spindle or cup", "Torque, %");
        assertThat(bench.act(batch, Map.of("act", "read", "kind", "VISCOSITY", "value", "3,400", "vessel", "Kettle"))
                        .body())
                .contains("3,400 may mean 3400 or 3.4: type the one that is meant");
    }

    @Test
    void correctionsAreWeighedAdditionsWithTheirPurpose() {
        bench.readyBoth(batch);
        assertThat(screen("?do=correct&vessel=Kettle&purpose=CORRECTION_ACID")).contains("Lactic acid 80 %");
        assertThat(screen("?do=correct&vessel=Kettle&purpose=CORRECTION_ACID&material=" + LotionBench.ACID))
                .contains("Add into Kettle", "class=\"caution\"", "A-1 · 100 g by the book");

        bench.act(
                batch,
                Map.of(
                        "act",
                        "weigh",
                        "vessel",
                        "Kettle",
                        "material",
                        LotionBench.ACID,
                        "purpose",
                        "CORRECTION_ACID",
                        "lot",
                        "A-1",
                        "mass",
                        "0.85",
                        "balance",
                        "Fine scale"));
        Poured poured = bench.state(batch).corrections().get(0).event();
        assertThat(poured.purpose()).isEqualTo(Purpose.CORRECTION_ACID);
        assertThat(poured.mass()).isEqualTo(Grams.of("0.85"));
    }

    @Test
    void restComesBackByItself() {
        bench.readyBoth(batch);
        bench.weigh(batch, "Kettle", "l1", "391", "W-1");
        assertThat(bench.act(batch, Map.of("act", "rest", "due", "tomorrow")).body())
                .contains("not a day and time");
        bench.act(batch, Map.of("act", "rest", "due", "2026-11-26T09:00", "lookFor", "pH and layer"));
        assertThat(bench.state(batch).stage()).isEqualTo(BatchStage.RESTING);
        assertThat(bench.get("/").body()).contains("Resting").doesNotContain("Look again now");

        bench.close();
        bench = LotionBench.later(folder, Duration.ofDays(1));
        assertThat(bench.get("/").body()).contains("Look again now", "B-1");
        assertThat(screen("?do=look")).contains("Look for: pH and layer");
        bench.act(batch, Map.of("act", "look", "note", "clear"));
        assertThat(bench.state(batch).stage()).isEqualTo(BatchStage.IN_WORK);
    }

    @Test
    void longAndStrangeTextsAreKeptOutOrEscaped() {
        bench.readyBoth(batch);
        Answer huge = bench.act(batch, Map.of("act", "note", "text", "x".repeat(10_000_000)));
        assertThat(huge.status()).isEqualTo(413);
        assertThat(huge.body()).contains("larger than Stillroom takes").doesNotContain("Exception");
        Answer large = bench.act(batch, Map.of("act", "note", "text", "y".repeat(30_000)));
        assertThat(large.status()).isEqualTo(422);
        assertThat(large.body()).contains("up to 20000 fit here", "y".repeat(30_000));
        bench.act(batch, Map.of("act", "note", "text", "<script>alert(1)</script>"));
        assertThat(screen("")).contains("&lt;script&gt;alert(1)").doesNotContain("<script>alert");
    }

    @Test
    void unknownThingsAreAnsweredWithASentence() {
        assertThat(bench.get("/batches/99/bench").status()).isEqualTo(404);
        bench.readyBoth(batch);
        assertThat(bench.get("/batches/" + batch + "/bench?do=weigh&line=nope").body())
                .contains("The plan has no such line.");
        assertThat(bench.get("/batches/" + batch + "/bench?do=strike&entry=77").status())
                .isEqualTo(404);
        assertThat(bench.weigh(batch, "Nowhere", "l1", "5", "W-1").body()).contains("No vessel called Nowhere");
        assertThat(bench.weigh(batch, "Kettle", "l1", "5", "Z-9").body()).contains("No lot Z-9 is booked");
        assertThat(bench.act(batch, Map.of("act", "dance")).body()).contains("This form is not known here");
        assertThat(bench.act(batch, Map.of("act", "note", "text", "x", "requestId", "?"))
                        .status())
                .isEqualTo(422);
    }
}
