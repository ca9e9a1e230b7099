package stillroom.formulary.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static stillroom.formulary.plan.Workbench.g;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.evaluation.Portion;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.plan.Workbench;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

class AsMadeTest {
    @Test
    void aPerfectlyWorkedPlanIsThePlan() {
        AsMade made = made(LogWriter.toner().everyLineAsPlanned("beaker"));
        for (PlannedLine line : LogWriter.tonerPlan().lines()) {
            MadeLine one = made.line(line.lineId()).orElseThrow();
            assertThat(one.actual()).isEqualTo(line.target());
            assertThat(one.made()).isEqualTo(line.asked());
            assertThat(one.deviationPercent().orElse(BigDecimal.ZERO)).isEqualByComparingTo("0");
        }
        assertThat(made.deviations()).isEmpty();
        assertThat(made.product()).isEqualTo(g("1000"));
    }

    /** 50 g of 1000 g leave as a sample before 5 g of acid go in: 5 / 955, not 5 / 1005. */
    @Test
    void aSampleBeforeACorrectionIsAllowedFor() {
        LogWriter log = LogWriter.toner()
                .everyLineAsPlanned("beaker")
                .add(new BatchEvent.Sampled("beaker", g("50"), "pH"))
                .pour("beaker", "", "acid-2", g("5"), Purpose.CORRECTION_ACID);
        MadeLine acid = made(log).line("made-acid-2-correction-acid").orElseThrow();
        assertThat(acid.made().value().doubleValue()).isEqualTo(500.0 / 955, offset(1e-9));
        assertThat(acid.phaseId()).isEqualTo(AsMade.CORRECTIONS);
        assertThat(acid.target()).isEmpty();
    }

    @Test
    void deviationIsInPercentOfTheTarget() {
        LogWriter log = LogWriter.toner().pour("beaker", "p", "preservative-1", "9.9");
        MadeLine line = made(log).line("p").orElseThrow();
        assertThat(line.deviationPercent().orElseThrow()).isEqualByComparingTo("10");
        assertThat(line.withinTolerance()).isFalse();
        assertThat(made(log).deviations()).extracting(MadeLine::lineId).containsExactly("w", "h", "s", "p");
    }

    @Test
    void aLineToAReadingAndCorrectionsWithItsMaterialAreOneLineWithoutADeviation() {
        LogWriter log = LogWriter.toner()
                .everyLineAsPlanned("beaker")
                .pour("beaker", "", "acid-1", g("1.3"), Purpose.CORRECTION_ACID);
        AsMade made = made(log);
        MadeLine acid = made.line("c").orElseThrow();
        assertThat(acid.actual()).isEqualTo(acid.target().orElseThrow().plus(g("1.3")));
        assertThat(acid.deviationPercent()).isEmpty();
        assertThat(made.lines()).extracting(MadeLine::materialKey).containsOnlyOnce("acid-1");
        assertThat(made.lines()).extracting(MadeLine::lineId).containsExactly("w", "h", "s", "p", "c");
        // what was added is still what the lines add up to
        assertThat(Grams.sum(made.lines().stream().map(MadeLine::actual).toList()))
                .isEqualTo(made.added());
    }

    @Test
    void halvesOfATenthOfAPercentAreRoundedAwayFromZero() {
        assertThat(off("4", "4.01")).isEqualByComparingTo("0.3"); // 0.25 %
        assertThat(off("4", "3.99")).isEqualByComparingTo("-0.3");
        assertThat(off("2000", "2001")).isEqualByComparingTo("0.1"); // 0.05 %
        assertThat(off("3", "3.01")).isEqualByComparingTo("0.3"); // 0.333 %
    }

    private static BigDecimal off(String target, String actual) {
        return new MadeLine(
                        "l",
                        "a",
                        "water",
                        Optional.of(g(target)),
                        Optional.of(g("1")),
                        Optional.empty(),
                        g(actual),
                        Percent.of("1"),
                        false)
                .deviationPercent()
                .orElseThrow();
    }

    @Test
    void theWrongMaterialStandsOnALineOfItsOwn() {
        LogWriter log = LogWriter.toner().pour("beaker", "h", "humectant-2", "30");
        AsMade made = made(log);
        assertThat(made.line("h").orElseThrow().actual()).isEqualTo(g("0"));
        assertThat(made.line("made-humectant-2").orElseThrow().actual()).isEqualTo(g("30"));
    }

    @Test
    void lossBesideAFragranceIsNotCalledWater() {
        LogWriter log = LogWriter.toner()
                .everyLineAsPlanned("beaker")
                .pour("beaker", "", "fragrance-1", "3")
                .add(new BatchEvent.VesselWeighed("beaker", g("1290")));
        Evaporated evaporated = made(log).evaporated();
        assertThat(evaporated.lost()).isEqualTo(g("13"));
        assertThat(evaporated.asWater()).isFalse();
        assertThat(evaporated.says()).contains("fragrance 1");
        assertThat(made(log).waterLostFraction()).isZero();
    }

    @Test
    void theSubjectHasWhatWasMadeAndThePhThatWasRead() {
        LogWriter log = LogWriter.toner().everyLineAsPlanned("beaker").ph(5.4);
        Subject subject = made(log).subject(Brief.of(ProductType.TONER), Workbench.toner(), log.state());
        assertThat(subject.measuredPh()).contains(new Interval(5.4 - 0.05, 5.4 + 0.05));
        assertThat(subject.portions()).extracting(Portion::phase).containsOnly("water", "cool");
        assertThat(subject.portions().stream()
                        .mapToDouble(p -> p.share().nominal())
                        .sum())
                .isEqualTo(1, offset(1e-12));
    }

    /** By hand: 1001.7 - 37 + 2.6 + 0.7 + 12 = 980 g of product; 0.7 g of base are 0.0714 % of it. */
    @Test
    void carriedFormulaAddsUpAndKeepsItsKinds() {
        LogWriter log = LogWriter.toner()
                .everyLineAsPlanned("beaker")
                .pour("beaker", "h", "humectant-1", "1.7")
                .add(new BatchEvent.Sampled("beaker", g("37"), "pH"))
                .pour("beaker", "c", "acid-1", g("2.6"), Purpose.CORRECTION_ACID)
                .pour("beaker", "", "base-1", g("0.7"), Purpose.CORRECTION_BASE)
                .pour("beaker", "", "water", g("12"), Purpose.CORRECTION_WATER);
        Formula carried = new CarriedFormula(made(log), Workbench.toner(), log.state(), Workbench.BOOK).at(3);
        assertThat(carried.line("w").orElseThrow().amount()).isEqualTo(new Amount.ToHundred());
        Amount.ToReading acid =
                (Amount.ToReading) carried.line("c").orElseThrow().amount();
        assertThat(acid.range())
                .isEqualTo(new PercentRange(
                        Percent.of("0.1"),
                        acid.expected().compareTo(Percent.of("0.4")) > 0 ? acid.expected() : Percent.of("0.4")));
        Amount.ToReading base = (Amount.ToReading)
                carried.line("made-base-1-correction-base").orElseThrow().amount();
        assertThat(base.reading()).isEqualTo(ReadingKind.PH);
        assertThat(base.expected()).isEqualTo(Percent.of("0.071"));
        assertThat(base.range()).isEqualTo(PercentRange.of("0.035", "0.107"));
        assertThat(carried.lines())
                .extracting(Line::id)
                .containsExactly("w", "h", "s", "p", "c", "made-base-1-correction-base");
    }

    @Test
    void freeHandWorkBecomesAFormula() {
        LogWriter log = new LogWriter()
                .vessel("pot")
                .pour("pot", "", "oil-1", "20")
                .pour("pot", "", "wax-1", "10")
                .step("pot", "melt", 72)
                .vessel("jug")
                .pour("jug", "", "water", "59.97")
                .pour("jug", "", "active-1", "0.03");
        Formula carried = new CarriedFormula(
                        AsMade.of(log.state(), Formula.EMPTY, Workbench.BOOK),
                        Formula.EMPTY,
                        log.state(),
                        Workbench.BOOK)
                .at(1);
        assertThat(carried.phases()).extracting(phase -> phase.name()).containsExactly("pot", "jug");
        assertThat(carried.phases().get(0).steps().get(0).celsius()).isEqualTo(Optional.of(72.0));
        assertThat(carried.line("made-water").orElseThrow().amount()).isEqualTo(new Amount.ToHundred());
        BigDecimal sum = carried.lines().stream()
                .map(Line::amount)
                .filter(Amount.Fixed.class::isInstance)
                .map(amount -> ((Amount.Fixed) amount).percent().value())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(sum).isEqualByComparingTo("33.4");
    }

    private static AsMade made(LogWriter log) {
        return AsMade.of(log.state(), Workbench.toner(), Workbench.BOOK);
    }
}
