package stillroom.desk.products;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillroom.desk.OpenDesk;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

final class FormulaEditorTest {
    @TempDir
    private Path folder;

    private OpenDesk desk;
    private Bench bench;

    @BeforeEach
    void open() {
        desk = OpenDesk.in(folder);
        bench = Bench.on(desk);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private List<String> order() {
        return bench.stored().formula().lines().stream().map(Line::id).toList();
    }

    @Test
    void whatTheFormShowsIsWhatIsStored() {
        assertThat(bench.post("", bench.form()).status()).isEqualTo(303);
        assertThat(bench.stored().formula()).isEqualTo(Bench.FORMULA);
        assertThat(bench.stored().edit()).as("an unchanged form is no edit").isEqualTo(1);
    }

    @Test
    void showsFiguresAndResolvedAmountBesideTheLines() {
        Answer page = desk.get(bench.path());
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.body())
                .contains("What it amounts to")
                .contains("94.10 <small>%</small>")
                .contains("q.s. to pH");
    }

    @Test
    void savesAChangedAmountTypedWithAComma() {
        Answer answer = bench.post("", bench.formWith("line-b-amount", "2,75"));
        assertThat(answer.status()).isEqualTo(303);
        assertThat(bench.stored().formula().line("b").orElseThrow().amount()).isEqualTo(Amount.fixed("2.75"));
    }

    @ParameterizedTest
    @CsvSource({
        "1O, type it like 2.5 or 2,5",
        "NaN, type it like 2.5 or 2,5",
        "1e3, type it like 2.5 or 2,5",
        "-3, cannot be below 0 %",
        "100.01, cannot be above 100 %",
    })
    void anAmountThatCannotBeTakenStaysAsTypedAndTheOthersAreSaved(String typed, String sentence) {
        Map<String, List<String>> form = bench.formWith("line-b-amount", typed);
        form.put("line-c-amount", List.of("0.6"));
        Answer answer = bench.post("", form);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body())
                .contains("name=\"line-b-amount\" value=\"" + typed + "\"")
                .contains(sentence)
                .contains("Until then 5 % counts");
        assertThat(bench.stored().formula().line("b").orElseThrow().amount()).isEqualTo(Amount.fixed("5"));
        assertThat(bench.stored().formula().line("c").orElseThrow().amount()).isEqualTo(Amount.fixed("0.6"));
    }

    @Test
    void aNewRowBecomesALineOfTheCardThatItNames() {
        assertThat(bench.post("", bench.formWithLine("n1", "glycerin 86 %", "1"))
                        .status())
                .isEqualTo(303);
        Line added = bench.stored().formula().line("n1").orElseThrow();
        assertThat(added.materialKey()).isEqualTo("glycerin-86");
        assertThat(bench.stored().formula().phases().get(0).lines()).contains(added);
    }

    @Test
    void aRowWithoutANameIsKeptOnThePageUntilItHasOne() {
        Answer answer = bench.post("", bench.formWithLine("n1", "", "1.5"));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body())
                .contains("name=\"line-n1-amount\" value=\"1.5\"")
                .contains("Which material?");
        assertThat(bench.stored().formula().line("n1")).isEmpty();
    }

    @Test
    void aBlankRowIsNoLine() {
        assertThat(bench.post("", bench.formWithLine("n1", " ", "")).status()).isEqualTo(303);
        assertThat(order()).containsExactly("a", "b", "c", "d");
    }

    @Test
    void anUnknownNameIsKeptAndOffersLikeCardsAndANewOne() {
        assertThat(bench.post("", bench.formWithLine("n1", "Glycerine <b>pure</b>", "1"))
                        .status())
                .isEqualTo(303);
        assertThat(bench.keys()).contains("Glycerine <b>pure</b>");
        String page = desk.get(bench.path()).body();
        assertThat(page)
                .contains("No card is named")
                .contains("/use/n1/glycerin-")
                .contains("/materials/new?name=Glycerine")
                .doesNotContain("<b>pure</b>");
        assertThat(bench.post("/use/n1/glycerin-86", bench.form()).status()).isEqualTo(303);
        assertThat(bench.stored().formula().line("n1").orElseThrow().materialKey())
                .isEqualTo("glycerin-86");
    }

    @Test
    void qsTypedAsAnAmountFillsTheLineUpToHundred() {
        Map<String, List<String>> form = bench.formWith("line-b-amount", "q.s.");
        form.put("line-a-kind", List.of("FIXED"));
        assertThat(bench.post("", form).status()).isEqualTo(303);
        assertThat(bench.stored().formula().line("b").orElseThrow().amount()).isEqualTo(new Amount.ToHundred());
        assertThat(bench.stored().formula().line("a").orElseThrow().amount())
                .as("what q.s. to 100 had come to")
                .isEqualTo(Amount.fixed("94.1"));
    }

    @Test
    void aLineAddedUpToAReadingCarriesARange() {
        Map<String, List<String>> form = bench.formWith("line-d-kind", "PH");
        form.put("line-d-low", List.of("0.1"));
        form.put("line-d-high", List.of("0.9"));
        assertThat(bench.post("", form).status()).isEqualTo(303);
        assertThat(bench.amountOf("d")).contains("PH", "0.4", "0.1", "0.9");
    }

    @Test
    void anExpectedAmountOutsideItsRangeIsSaid() {
        Map<String, List<String>> form = bench.formWith("line-d-kind", "PH");
        form.put("line-d-low", List.of("0.5"));
        form.put("line-d-high", List.of("0.9"));
        Answer answer = bench.post("", form);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("lies outside the range 0.5 to 0.9 %");
    }

    /** So does a sheet leave it that says q.s. and no amount. */
    @Test
    void anAmountThatIsFirstStatedMakesTheRangeThatNobodyStated() {
        Map<String, List<String>> form = bench.formWith("line-d-kind", "PH");
        for (String field : List.of("line-d-amount", "line-d-low", "line-d-high")) {
            form.put(field, List.of("0"));
        }
        assertThat(bench.post("", form).status()).isEqualTo(303);
        Answer answer = bench.post("", bench.formWith("line-d-amount", "0,1"));
        assertThat(answer.status()).isEqualTo(303);
        assertThat(bench.stored().formula().line("d").orElseThrow().amount())
                .isEqualTo(new Amount.ToReading(ReadingKind.PH, Percent.of("0.1"), PercentRange.of("0", "0.2")));
    }

    @Test
    void twoLinesUpToHundredAreAFindingBesideBoth() {
        Map<String, List<String>> form = bench.formWith("line-b-kind", "TO_HUNDRED");
        assertThat(bench.post("", form).status()).isEqualTo(303);
        assertThat(desk.get(bench.path()).body().split("are q.s. to 100; only one can take", -1))
                .as("beside two lines and in the list")
                .hasSize(4);
    }

    @Test
    void aFindingOfManyLinesIsToldInFullBesideTheFirst() {
        Map<String, List<String>> form = bench.formWith("line-b-kind", "TO_HUNDRED");
        form.put("line-c-kind", List.of("TO_HUNDRED"));
        bench.post("", form);
        String page = desk.get(bench.path()).body();
        assertThat(page.split("3 lines are q.s. to 100", -1))
                .as("beside the first and in the list")
                .hasSize(3);
        assertThat(page.split("concerns this line too, see Water, purified", -1))
                .hasSize(3);
    }

    @Test
    void nothingAsAnAmountIsAskedOnceByAFinding() {
        assertThat(bench.post("", bench.formWith("line-b-amount", "0")).status())
                .isEqualTo(303);
        assertThat(desk.get(bench.path()).body()).contains("This line is at 0 %");
    }

    @ParameterizedTest
    @CsvSource({
        "line-up/c, a c b d",
        "line-down/a, b a c d",
        "line-up/a, a b c d",
        "line-down/c, a b c d",
        "line-remove/b, a c d",
    })
    void linesAreRearranged(String act, String expected) {
        assertThat(bench.post("/do/" + act, bench.form()).status()).isEqualTo(303);
        assertThat(String.join(" ", order())).isEqualTo(expected);
    }

    @Test
    void pastTheEndOfItsPhaseALineGoesIntoTheNextOne() {
        bench.post("/do/line-down/c", bench.form());
        Formula formula = bench.stored().formula();
        assertThat(formula.phase("p2").orElseThrow().lines())
                .extracting(Line::id)
                .containsExactly("c", "d");
        bench.post("/do/line-up/c", bench.form());
        assertThat(bench.stored().formula()).isEqualTo(Bench.FORMULA);
    }

    @Test
    void aLineMovesToThePhaseThatItsFieldNames() {
        bench.post("", bench.formWith("line-b-phase", "p2"));
        assertThat(bench.stored().formula().phase("p2").orElseThrow().lines())
                .extracting(Line::id)
                .containsExactly("b", "d");
    }

    @Test
    void aDuplicateStandsBelowItsLineWithAllThatIsTyped() {
        bench.post("/do/line-copy/b", bench.form());
        List<Line> lines = bench.stored().formula().phases().get(0).lines();
        assertThat(lines).hasSize(4);
        assertThat(lines.get(2).materialKey()).isEqualTo("glycerin-86");
        assertThat(lines.get(2).note()).isEqualTo("slip");
        assertThat(lines.get(2).id()).isNotEqualTo("b");
    }

    @Test
    void phasesAreAddedMovedRenamedAndRemoved() {
        bench.post("/do/phase-add/new", bench.form());
        assertThat(bench.stored().formula().phases()).extracting(Phase::name).contains("Phase 3");
        bench.post("/do/phase-up/p2", bench.formWith("phase-p2-name", "Acid"));
        assertThat(bench.stored().formula().phases())
                .extracting(Phase::name)
                .containsExactly("Acid", "Water phase", "Phase 3");
        bench.post("/do/phase-remove/p2", bench.form());
        assertThat(bench.stored().formula().phases()).extracting(Phase::id).doesNotContain("p2");
    }

    @Test
    void aPhaseWithoutANameKeepsItsOldOne() {
        Answer answer = bench.post("", bench.formWith("phase-p1-name", " "));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("until it has one it stays \"Water phase\"");
        assertThat(bench.stored().formula().phases().get(0).name()).isEqualTo("Water phase");
    }

    @Test
    void aStepIsWrittenAndAnUnreadableTimeKeepsTheOldOne() {
        Map<String, List<String>> form = bench.formWith("step-s1-doing", "Stir and warm");
        form.put("step-s1-minutes", List.of("ten"));
        Answer answer = bench.post("", form);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("name=\"step-s1-minutes\" value=\"ten\"");
        assertThat(bench.stored().formula().phases().get(0).steps().get(0).doing())
                .isEqualTo("Stir and warm");
        assertThat(bench.stored().formula().phases().get(0).steps().get(0).minutes())
                .contains(10.0);
    }

    @Test
    void aNoteThatIsTooLongIsRefusedAndTheOldOneStays() {
        Answer answer = bench.post("", bench.formWith("line-b-note", "x".repeat(20_001)));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("20001 characters");
        assertThat(bench.stored().formula().line("b").orElseThrow().note()).isEqualTo("slip");
    }

    @Test
    void aStaleFormIsNotSavedAndLosesNothing() {
        Map<String, List<String>> mine = bench.formWith("line-b-amount", "7");
        bench.post("", bench.formWith("line-c-amount", "0.7"));
        Answer answer = bench.post("", mine);
        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.body())
                .contains("changed elsewhere meanwhile")
                .contains("name=\"line-b-amount\" value=\"7.00\"")
                .contains("Stored: Sodium benzoate 0.70\u00a0%")
                .contains("You typed: Sodium benzoate 0.50\u00a0%");
        assertThat(bench.stored().formula().line("b").orElseThrow().amount()).isEqualTo(Amount.fixed("5"));
    }

    @Test
    void whatWasTypedIntoAStaleFormCanBecomeAVersionOfItsOwn() {
        Map<String, List<String>> mine = bench.formWith("line-b-amount", "7");
        bench.post("", bench.formWith("line-c-amount", "0.7"));
        Answer answer = bench.post("/branch", mine);
        assertThat(answer.location()).startsWith("/products/" + bench.product().id() + "/versions/2");
        Formula branched = desk.ledger()
                .products()
                .version(bench.product().id(), 2)
                .orElseThrow()
                .formula();
        assertThat(branched.line("b").orElseThrow().amount()).isEqualTo(Amount.fixed("7"));
    }

    @Test
    void aKeptVersionNeverChangesAgain() {
        assertThat(bench.post("/keep", bench.formWith("line-b-amount", "6")).status())
                .isEqualTo(303);
        assertThat(bench.stored().kept()).isTrue();
        assertThat(bench.stored().formula().line("b").orElseThrow().amount()).isEqualTo(Amount.fixed("6"));
        assertThat(desk.get(bench.path()).body())
                .doesNotContain("name=\"line-b-amount\"")
                .contains("New version from this");
        assertThat(bench.post("", bench.formWith("line-b-amount", "8")).status())
                .isEqualTo(409);
        assertThat(bench.stored().formula().line("b").orElseThrow().amount()).isEqualTo(Amount.fixed("6"));
    }

    @Test
    void aVersionIsNotKeptWhileSomethingInItCannotBeRead() {
        assertThat(bench.post("/keep", bench.formWith("line-b-amount", "six")).status())
                .isEqualTo(422);
        assertThat(bench.stored().kept()).isFalse();
    }

    @Test
    void aFormWithoutItsEditChangesNothing() {
        Map<String, List<String>> form = bench.form();
        form.remove("edit");
        assertThat(bench.post("", form).status()).isEqualTo(400);
        assertThat(bench.stored().formula()).isEqualTo(Bench.FORMULA);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/products/1/versions/99", "/products/99/versions/1", "/products/99", "/products/99/brief"})
    void whatDoesNotExistIsSaidSo(String path) {
        Answer answer = desk.get(path);
        assertThat(answer.status()).isEqualTo(404);
        assertThat(answer.body()).contains("no ").doesNotContain("Exception");
    }

    @Test
    void aNoteOfTenMegabytesIsRefusedWithASentence() {
        Answer answer = bench.post("", bench.formWith("line-b-note", "x".repeat(10_000_000)));
        assertThat(answer.status()).isEqualTo(413);
        assertThat(answer.body()).contains("larger than Stillroom takes");
        assertThat(bench.stored().formula()).isEqualTo(Bench.FORMULA);
    }
}
