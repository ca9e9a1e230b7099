package stillroom.desk.dosing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;

class DosingPagesTest {
    @TempDir
    Path folder;

    private TonerBench bench;

    @BeforeEach
    void open() {
        bench = TonerBench.in(folder);
    }

    @AfterEach
    void close() {
        bench.close();
    }

    private static String found(Answer answer, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(answer.body());
        assertThat(matcher.find()).as(pattern).isTrue();
        return matcher.group(1);
    }

    /** 0.5 % benzoate with a 5 % dilution of citric acid 50 %, by the solver: see PhTasksTest. */
    private void titrate() {
        bench.append(TonerBench.reading(8.3));
        assertThat(bench.act("sample", "sample", "50", "correctorGrams", "5", "waterGrams", "95", "pH", "8.30")
                        .status())
                .isEqualTo(303);
        String titration =
                Integer.toString(bench.log().get(bench.log().size() - 2).number());
        for (String[] read : new String[][] {{"0.2", "5.60"}, {"0.5", "5.23"}, {"0.8", "5.03"}, {"1.1", "4.90"}}) {
            assertThat(bench.act("titrate", "titration", titration, "added", read[0], "pH", read[1])
                            .status())
                    .isEqualTo(303);
        }
    }

    @Test
    void theBulkIsReadFirstThenASampleIsPrescribed() {
        Answer before = bench.page();
        assertThat(before.status()).isEqualTo(200);
        assertThat(before.body())
                .contains("not read")
                .contains("What to expect is not known: so weakly buffered")
                .contains("Read the bulk first");
        assertThat(bench.act("read", "pH", "8.3").status()).isEqualTo(303);
        Answer after = bench.page();
        assertThat(found(after, "name=\"sample\" type=\"text\" value=\"([0-9.]+)\""))
                .isEqualTo("50.00");
        assertThat(after.body())
                .contains("into")
                .contains("The first addition will be")
                .contains("eye protection");
    }

    @Test
    void everyReadingIsInTheLogAndTheSampleLeavesTheBatch() {
        titrate();
        assertThat(bench.log().stream().filter(entry -> entry.event() instanceof BatchEvent.TitrationRead))
                .hasSize(5);
        BatchEvent.TitrationBegun begun = (BatchEvent.TitrationBegun) bench.log().stream()
                .map(entry -> entry.event())
                .filter(event -> event instanceof BatchEvent.TitrationBegun)
                .findFirst()
                .orElseThrow();
        assertThat(begun.dilution()).isEqualTo(Percent.of("5"));
        assertThat(begun.sample()).isEqualTo(Grams.of("50"));
    }

    /** The same grams of a lot that holds a fifth of the acid leave the pH higher. */
    @Test
    void whatIsInItCountsByTheCertificateOfItsLot() {
        stillroom.ledger.Ledger ledger = bench.desk().ledger();
        ledger.lots().add(lot(Optional.empty()));
        bench.append(new BatchEvent.Poured(
                "Kettle",
                Optional.empty(),
                TonerBench.ACID,
                Optional.of("CA-1"),
                Grams.of("20"),
                Purpose.CORRECTION_ACID,
                "Fine scale",
                "",
                ""));
        double byTheCard = Double.parseDouble(found(bench.page(), "one expects pH ([0-9.]+)"));
        stillroom.formulary.material.Strength weak = new stillroom.formulary.material.Strength(
                stillroom.formulary.quantity.PercentRange.of("10", "10"),
                stillroom.formulary.material.Strength.Basis.AS_ANHYDROUS,
                "Citric Acid");
        ledger.lots()
                .change(lot(Optional.of(new stillroom.formulary.material.Certificate(
                        Optional.of(weak), Optional.empty(), Optional.empty(), List.of(), ""))));
        double byTheLot = Double.parseDouble(found(bench.page(), "one expects pH ([0-9.]+)"));
        assertThat(byTheLot).isGreaterThan(byTheCard + 0.3);
    }

    private static stillroom.formulary.material.Lot lot(
            Optional<stillroom.formulary.material.Certificate> certificate) {
        return new stillroom.formulary.material.Lot(
                        "CA-1",
                        TonerBench.ACID,
                        "",
                        "",
                        Grams.of("500"),
                        java.time.LocalDate.of(2026, 1, 5),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        stillroom.formulary.material.Lot.State.RELEASED,
                        "")
                .with(certificate, Optional.empty());
    }

    /** By the solver 0.82 to 0.84 g of citric acid 50 % bring the remaining 950 g to pH 5. */
    @Test
    void theDoseIsSeventyPercentOfTheLowEndAndLeadsToTheBench() {
        titrate();
        Answer page = bench.page();
        double dose = Double.parseDouble(found(page, "class=\"dose-figure\">([0-9.]+) "));
        double all = Double.parseDouble(found(page, "<dd>([0-9.]+) g are missing in all"));
        double low = Double.parseDouble(found(page, "95 % interval ([0-9.]+) to"));
        assertThat(all).isEqualTo(0.85, within(0.06));
        assertThat(dose).isEqualTo(0.7 * low, within(0.011));
        String href =
                found(page, "href=\"(/batches/[^\"]*bench[^\"]*dose=[^\"]*)\"").replace("&amp;", "&");
        Answer weigh = bench.desk().get(href);
        assertThat(weigh.status()).isEqualTo(200);
        assertThat(weigh.body())
                .contains("The titration asks for")
                .contains("name=\"purpose\" value=\"CORRECTION_ACID\"");
        assertThat(page.body())
                .contains("id=\"titration-chart\"")
                .contains("What this dose does to the rest")
                .contains("Undissociated preservative");
    }

    @Test
    void afterTheFirstPartTheRestIsProposedAndInTheBandNothing() {
        titrate();
        bench.append(TonerBench.pour(TonerBench.ACID, "0.55", Purpose.CORRECTION_ACID));
        assertThat(bench.page().body()).contains("not read");
        bench.act("read", "pH", "5.20");
        Answer rest = bench.page();
        assertThat(found(rest, "class=\"dose-figure\">([0-9.]+) ")).isNotEqualTo("0.00");
        bench.append(TonerBench.pour(TonerBench.ACID, "0.28", Purpose.CORRECTION_ACID));
        bench.act("read", "pH", "5.02");
        assertThat(bench.page().body()).contains("nothing is needed");
    }

    @Test
    void anOvershootSaysWhatGoingBackCosts() {
        titrate();
        bench.append(TonerBench.pour(TonerBench.ACID, "3", Purpose.CORRECTION_ACID));
        bench.act("read", "pH", "4.40");
        Answer page = bench.page();
        assertThat(page.body())
                .contains("Beyond the target")
                .contains("Leaving it is outside the product")
                .contains("Going back to the target takes about")
                .contains("mmol of salt");
        bench.act("read", "pH", "4.90");
        assertThat(bench.page().body()).contains("Leaving it is within the product");
    }

    @Test
    void stripsAllowHalfAStep() {
        titrate();
        assertThat(bench.page("electrode=strip").body()).contains("Half a step: strips do not allow more");
    }

    @Test
    void theHeadShowsWhichPageOfTheBatchThisIs() {
        assertThat(bench.page().body())
                .containsPattern("href=\"/batches/\\d+/ph\" aria-current=\"page\"")
                .containsOnlyOnce("/ph\" aria-current=\"page\"");
        assertThat(bench.desk().get("/assets/dosing/dosing.css").body()).contains("/assets/batches/batches.css");
    }

    @Test
    void theLastTimesStandBeside() {
        bench.earlierBatch();
        assertThat(bench.page().body()).contains("261101-1").contains("pH 8.10 to 5.02, 1 addition");
    }

    @Test
    void theCorrectionIsReservedInANewDraft() {
        titrate();
        assertThat(bench.page().body()).doesNotContain("Reserve the correction");
        bench.append(TonerBench.pour(TonerBench.ACID, "0.83", Purpose.CORRECTION_ACID));
        assertThat(bench.page().body()).doesNotContain("Reserve the correction");
        bench.act("read", "pH", "5.02");
        Answer page = bench.page();
        assertThat(page.body()).contains("Reserve the correction");
        String expected = found(page, "name=\"expected\" type=\"text\" value=\"([0-9.]+)\"");
        Answer reserved = bench.act("reserve", "expected", expected, "low", "0.05", "high", "0.2");
        assertThat(reserved.status()).isEqualTo(303);
        assertThat(reserved.location()).contains("/versions/2");
        FormulaVersion draft = bench.desk()
                .ledger()
                .products()
                .version(bench.product().id(), 2)
                .orElseThrow();
        Amount.ToReading amount =
                (Amount.ToReading) draft.formula().lines().get(2).amount();
        assertThat(amount.expected()).isEqualTo(Percent.of(expected));
        assertThat(amount.range().high()).isEqualTo(Percent.of("0.2"));
        assertThat(draft.basedOn()).contains(1);
        assertThat(bench.act("reserve", "expected", "0.5", "low", "0.05", "high", "0.2")
                        .status())
                .isEqualTo(422);
    }

    @Test
    void badInputIsExplainedAndKept() {
        titrate();
        int entries = bench.log().size();
        Answer fifteen = bench.act("read", "pH", "15");
        assertThat(fifteen.status()).isEqualTo(422);
        assertThat(fifteen.body()).contains("must lie between 0 and 14").contains("value=\"15\"");
        Answer twice = bench.act("titrate", "titration", "5", "added", "0.50", "pH", "5.2");
        assertThat(twice.status()).isEqualTo(422);
        assertThat(twice.body()).contains("stands in the log already");
        Answer large = bench.act("sample", "sample", "2000", "correctorGrams", "5", "waterGrams", "95", "pH", "8.3");
        assertThat(large.status()).isEqualTo(422);
        assertThat(large.body()).contains("more than is in Kettle");
        Answer half = bench.act("sample", "sample", "50", "correctorGrams", "5", "waterGrams", "", "pH", "8.3");
        assertThat(half.body()).contains("Type both weighings of the dilution");
        assertThat(bench.log()).hasSize(entries);
    }

    @Test
    void readingsThatGoTheWrongWayAreNotFitted() {
        bench.append(TonerBench.reading(8.3));
        bench.act("sample", "sample", "50", "correctorGrams", "5", "waterGrams", "95", "pH", "5.30");
        String titration =
                Integer.toString(bench.log().get(bench.log().size() - 2).number());
        bench.act("titrate", "titration", titration, "added", "0.5", "pH", "5.90");
        assertThat(bench.page().body()).contains("against the corrector").contains("No dose is given");
    }

    @Test
    void aBulkThatReadsOtherwiseThanItsSampleGetsNoDose() {
        titrate();
        bench.act("read", "pH", "6.40");
        assertThat(bench.page().body()).contains("contradict each other").contains("No dose is given");
    }

    @Test
    void theSameFormSentTwiceIsOneAct() {
        bench.append(TonerBench.reading(8.3));
        String[] form = {
            "requestId", "one-act-1234", "sample", "50", "correctorGrams", "5", "waterGrams", "95", "pH", "8.3"
        };
        bench.act("sample", form);
        int entries = bench.log().size();
        assertThat(bench.act("sample", form).status()).isEqualTo(303);
        assertThat(bench.log()).hasSize(entries);
    }

    @Test
    void aCorrectorWithoutStrengthIsExplained() {
        bench.desk()
                .ledger()
                .materials()
                .save(stillroom.formulary.material.Material.named(
                        "odd-acid", "Odd acid", stillroom.formulary.material.Family.ACID));
        bench.append(TonerBench.reading(8.3));
        TonerBench later = bench;
        Answer page = later.page("corrector=odd-acid");
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.body()).contains("Odd acid has no strength");
    }

    @Test
    void aWrongTargetIsToldAndAnUnknownBatchIsNotFound() {
        Answer page = bench.page("target=20");
        assertThat(page.body()).contains("The target must lie between 0.5 and 13.5");
        assertThat(bench.desk().get("/batches/999/ph").status()).isEqualTo(404);
        assertThat(List.of(bench.act("guess").status())).containsExactly(422);
    }
}
