package stillroom.desk.trials;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.trial.TrialSet;

/** What cannot be designed or fitted is said in a sentence, with what was typed kept. */
class TrialFaultsTest {
    @TempDir
    Path folder;

    private OpenDesk desk;
    private ThreeLines lines;

    @BeforeEach
    void open() {
        desk = OpenDesk.in(folder);
        lines = ThreeLines.on(desk);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private void refused(Map<String, String> other, String sentence) {
        OpenDesk.Answer answer = lines.ask(other);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains(sentence, "value=\"three\"");
    }

    @Test
    void boundsThatExcludeAHundredPercentAreNamed() {
        refused(Map.of("low-w", "60", "low-g", "30", "low-o", "20"), "add up to 110");
        refused(Map.of("high-w", "45", "high-g", "20", "high-o", "20"), "add up to 85");
    }

    @Test
    void boundsAreJudgedInPercentOfTheFormulaWhereOnlySomeLinesVary() {
        OpenDesk.Answer answer = desk.postAll(
                "/trials/new", lines.two(Map.of("low-w", "50", "high-w", "70", "low-g", "40", "high-g", "60")));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body())
                .contains("The lower bounds add up to 90 %: no mixture of 85 % is left.")
                .contains("The chosen lines take 85 % of the formula together.");
    }

    @Test
    void limitsAreWrittenByTheLettersOfTheLines() {
        TrialSet set = lines.made(Map.of("constraints", "b + 2 C <= 72,5 %"));
        assertThat(set.constraints()).containsExactly("x2 + 2 x3 <= 72.5");
        assertThat(desk.get("/trials/" + set.key()).body())
                .contains("Glycerin, vegetable, 99.5 % + 2 Sunflower oil", "&lt;= 72.5 %");
        refused(Map.of("constraints", "A + D <= 50"), "names D, which is not one of the lines that vary: A, B, C.");
        refused(Map.of("constraints", "A and B"), "names and, which is not one");
        refused(Map.of("constraints", "A + B 50"), "cannot be read. Write it like A + B + C");
        refused(Map.of("constraints", "A >= 70\nA <= 50"), "These exclude each other at 100 %");
    }

    @Test
    void furtherRunsAreNotAddedTwiceFromAPageThatCameTooLate() {
        TrialSet set = lines.made(Map.of());
        String mark = mark(desk.get("/trials/" + set.key()).body());
        Map<String, String> form = Map.of("mark", mark, "more", "2");
        assertThat(desk.post("/trials/" + set.key() + "/more", form).status()).isEqualTo(303);
        OpenDesk.Answer again = desk.post("/trials/" + set.key() + "/more", form);
        assertThat(again.status()).isEqualTo(409);
        assertThat(again.body()).contains(Further.CHANGED, "name=\"more\" type=\"text\" value=\"2\"");
        assertThat(lines.stored(set.key()).runs()).hasSize(10);
        assertThat(desk.post("/trials/" + set.key() + "/more", Map.of("mark", mark(again.body()), "more", "2"))
                        .status())
                .isEqualTo(303);
        assertThat(lines.stored(set.key()).runs()).hasSize(12);
    }

    @Test
    void aFormFromBeforeFurtherRunsErasesNothingOfThem() {
        TrialSet set = lines.made(Map.of());
        assertThat(desk.post("/trials/" + set.key() + "/more", Map.of("more", "1"))
                        .status())
                .isEqualTo(303);
        assertThat(desk.post("/trials/" + set.key(), Map.of("m9-0", "777")).status())
                .isEqualTo(303);
        assertThat(desk.post("/trials/" + set.key(), Map.of("m1-0", "555")).status())
                .isEqualTo(303);
        assertThat(lines.stored(set.key()).runs().get(8).measured()).containsEntry("Thickness", 777.0);
        assertThat(lines.stored(set.key()).runs().get(0).measured()).containsEntry("Thickness", 555.0);
    }

    @Test
    void thePanelsScoresAreKeptAndTheirMeanIsFitted() {
        TrialSet set = lines.made(Map.of("response1panel", "yes"));
        assertThat(desk.post("/trials/" + set.key(), Map.of("m1-0", "6 7 5,5")).status())
                .isEqualTo(303);
        TrialSet.Run run = lines.stored(set.key()).runs().get(0);
        assertThat(run.scores()).containsEntry("Thickness", List.of(6.0, 7.0, 5.5));
        assertThat(run.measured().get("Thickness")).isCloseTo(18.5 / 3, org.assertj.core.data.Offset.offset(1e-12));
        assertThat(desk.get("/trials/" + set.key()).body()).contains("value=\"6 7 5.5\"", "3 scores, mean 6.167");
        OpenDesk.Answer wrong = desk.post("/trials/" + set.key(), Map.of("m1-0", "6 seven"));
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.body()).contains("\u201cseven\u201d is not a number", "value=\"6 seven\"");
    }

    @Test
    void theRunsLeaveAsATable() {
        TrialSet set = lines.made(Map.of("response1unit", "mPa s", "response1panel", "yes"));
        assertThat(desk.post("/trials/" + set.key(), Map.of("m1-0", "6 7", "note1", "=1+1, cloudy"))
                        .status())
                .isEqualTo(303);
        String[] table = desk.get("/trials/" + set.key() + "/runs.csv").body().split("\r\n");
        assertThat(table).hasSize(9);
        assertThat(table[0])
                .startsWith("\uFEFFrun,day,batch,as_weighed,\"Water, purified planned %\"")
                .endsWith("Thickness (mPa s),Thickness scores,note");
        int order = set.runs().get(0).order();
        assertThat(table[order]).startsWith(order + ",1,,no,").endsWith(",6.5,6 7,\"'=1+1, cloudy\"");
    }

    private static String mark(String page) {
        return page.replaceAll("(?s).*name=\"mark\" id=\"mark\" value=\"(\\w+)\".*", "$1");
    }

    @Test
    void fewerRunsThanTermsAreCounted() {
        refused(Map.of("model", "QUADRATIC", "runs", "5", "repeats", "0"), "5 runs cannot tell 6 terms apart");
    }

    @Test
    void aClassicalDesignIsMadeWhereItFitsAndRefusedWhereItIsCut() {
        TrialSet lattice = lines.made(Map.of("criterion", "LATTICE", "steps", "3", "repeats", "2"));
        assertThat(lattice.runs()).hasSize(10 + 2);
        assertThat(lattice.design().criterion()).isEqualTo("LATTICE");
        assertThat(lines.made(Map.of("criterion", "CENTROID", "repeats", "0")).runs())
                .hasSize(7);
        refused(Map.of("criterion", "LATTICE", "high-o", "30"), "1 of the 6 mixtures of this design lie outside");
        refused(Map.of("criterion", "CENTROID", "blocks", "2"), "made on one day");
        assertThat(desk.post("/trials/" + lattice.key() + "/more", Map.of("more", "2"))
                        .status())
                .isEqualTo(303);
    }

    private String results(TrialSet set, List<String> values) {
        assertThat(lines.enter(set, values).status()).isEqualTo(303);
        return desk.get("/trials/" + set.key() + "/results").body();
    }

    private static List<String> plane(TrialSet set) {
        List<String> values = new ArrayList<>();
        for (int i = 0; i < set.runs().size(); i++) {
            List<Double> x = set.runs().get(i).fractions();
            values.add("" + (1000 * x.get(0) + 3000 * x.get(1) + 7000 * x.get(2) + (i % 2 == 0 ? 8 : -8)));
        }
        return values;
    }

    @Test
    void equalResponsesExplainNothing() {
        TrialSet set = lines.made(Map.of());
        assertThat(results(set, Collections.nCopies(8, "2000")))
                .contains("All 8 responses are the same: there is nothing to explain.");
    }

    @Test
    void aMissingResponseIsLeftOutAndNamed() {
        TrialSet set = lines.made(Map.of());
        List<String> values = plane(set);
        values.set(4, "");
        assertThat(results(set, values))
                .contains("Not measured, and left out of the fit: run "
                        + set.runs().get(4).order() + ".")
                .contains("not measured");
    }

    @Test
    void aCommaThatMayPartThousandsIsAskedAboutAndNotTakenForADecimal() {
        TrialSet set = lines.made(Map.of());
        String field = "m" + set.runs().get(0).version() + "-0";
        OpenDesk.Answer answer = desk.post("/trials/" + set.key(), Map.of(field, "5,100"));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("5,100 may mean 5100 or 5.1: type the one that is meant", "value=\"5,100\"");
        assertThat(lines.stored(set.key()).runs().get(0).measured()).isEmpty();
        assertThat(desk.post("/trials/" + set.key(), Map.of(field, "5,1")).status())
                .isEqualTo(303);
        assertThat(lines.stored(set.key()).runs().get(0).measured()).containsEntry("Thickness", 5.1);
    }

    @Test
    void aWantedRangeIsAskedAboutInItsOwnFields() {
        Map<String, String> range = Map.of("response1aim", "TARGET", "response1low", "3,000", "response1high", "8000");
        OpenDesk.Answer answer = lines.ask(range);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("3,000 may mean 3000 or 3.0");
        assertThat(lines.ask(Map.of("response1aim", "TARGET")).body())
                .containsPattern("id=\"response1low\"[^>]*aria-invalid=\"true\"");
    }

    @Test
    void theBestMixtureBecomesADraftOfTheFormula() {
        TrialSet set = lines.made(Map.of("response1aim", "LARGER", "response1low", "1000", "response1high", "9000"));
        assertThat(results(set, plane(set))).contains("Take it as a new draft version");
        String mark = TrialBook.mark(lines.stored(set.key()));
        OpenDesk.Answer taken = desk.post("/trials/" + set.key() + "/take", Map.of("mark", mark));
        assertThat(taken.status()).isEqualTo(303);
        assertThat(taken.location()).contains("/products/" + lines.product() + "/versions/2?did=best");
        FormulaVersion draft =
                desk.ledger().products().version(lines.product(), 2).orElseThrow();
        assertThat(draft.formula().line("o").orElseThrow().amount())
                .describedAs("the third line thickens most, and goes as high as it may")
                .isEqualTo(Amount.fixed("50"));
        assertThat(draft.formula().line("w").orElseThrow().amount()).isEqualTo(new Amount.ToHundred());
        assertThat(desk.post("/trials/" + set.key() + "/take", Map.of("mark", "old"))
                        .status())
                .isEqualTo(409);
        assertThat(desk.ledger().products().versions(lines.product())).hasSize(2);
    }

    @Test
    void aRunHasTheNumberOfItsVersionAndItsBatchLeadsBack() {
        TrialSet set = lines.made(Map.of());
        assertThat(set.runs()).allMatch(run -> run.version() == run.order());
        TrialSet.Run run = set.runs().get(2);
        String back = "href=\"/trials/" + set.key() + "#run-" + run.order() + "\">three, run " + run.order();
        assertThat(desk.get("/products/" + set.product() + "/versions/" + run.version() + "/plan")
                        .body())
                .contains(back, "Weigh out three, run " + run.order());
        String plan =
                "/products/" + set.product() + "/versions/" + set.runs().get(3).version() + "/plan";
        assertThat(desk.get("/trials/" + set.key()).body()).contains(plan + "?by=mass&amp;mass=100");
        lines.weigh(set, run, 50, 30, 20);
        assertThat(desk.get("/trials/" + set.key()).body()).contains("href=\"" + plan + "\"");
        assertThat(desk.get(plan).body())
                .describedAs("the size of the beaker before is proposed for the next")
                .containsPattern("id=\"mass\"[^>]*value=\"100\"");
        long batch = desk.ledger()
                .batches()
                .byCode("T-" + run.version())
                .orElseThrow()
                .id();
        for (String page : List.of("", "/bench", "/as-made")) {
            assertThat(desk.get("/batches/" + batch + page).body()).contains(back);
        }
    }

    @Test
    void anOutlierIsNamedAndKept() {
        TrialSet set = lines.made(Map.of("runs", "12"));
        List<String> values = plane(set);
        values.set(2, "" + (Double.parseDouble(values.get(2)) + 4000));
        assertThat(results(set, values))
                .contains("Run " + set.runs().get(2).order() + " does not fit the others", "It is kept in the fit.");
    }

    @Test
    void aFormThatCameTooLateOverwritesNothingAndKeepsWhatWasTyped() {
        TrialSet set = lines.made(Map.of());
        String mark = desk.get("/trials/" + set.key())
                .body()
                .replaceAll("(?s).*name=\"mark\" id=\"mark\" value=\"(\\w+)\".*", "$1");
        String field = "m" + set.runs().get(0).version() + "-0";
        assertThat(desk.post("/trials/" + set.key(), Map.of("mark", mark, field, "2100"))
                        .status())
                .isEqualTo(303);
        OpenDesk.Answer late = desk.post("/trials/" + set.key(), Map.of("mark", mark, field, "9900"));
        assertThat(late.status()).isEqualTo(409);
        assertThat(late.body()).contains("value=\"9900\"", "Thickness is stored as 2100");
        assertThat(lines.stored(set.key()).runs().get(0).measured()).containsEntry("Thickness", 2100.0);
        String fresh = late.body().replaceAll("(?s).*name=\"mark\" id=\"mark\" value=\"(\\w+)\".*", "$1");
        assertThat(desk.post("/trials/" + set.key(), Map.of("mark", fresh, field, "9900"))
                        .status())
                .describedAs("a second press saves what was typed")
                .isEqualTo(303);
        assertThat(lines.stored(set.key()).runs().get(0).measured()).containsEntry("Thickness", 9900.0);
    }

    @Test
    void theTernaryPictureHasLinesOfEqualHeightAndShowsHowSureItIs() {
        TrialSet set = lines.made(Map.of());
        String page = results(set, plane(set));
        assertThat(page).contains("class=\"contour\"", "class=\"height\"", "How sure: ± at 95 %", "class=\"run\"");
        String turned = desk.get("/trials/" + set.key() + "/results?top=3&right=1&left=2")
                .body();
        assertThat(turned.indexOf("text-anchor=\"middle\">Sunflower oil")).isPositive();
    }
}
