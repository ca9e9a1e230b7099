package stillroom.formulary.dosing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.batch.BatchRules;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.batch.BenchFacts;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.constants.PhConstants;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.judgement.Bench;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Family;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;
import stillroom.science.dosing.Addition;
import stillroom.science.dosing.Corrector;
import stillroom.science.dosing.Dose;
import stillroom.science.dosing.Dosing;
import stillroom.science.dosing.DosingAnswer;
import stillroom.science.dosing.DosingTask;
import stillroom.science.dosing.Instrument;
import stillroom.science.dosing.PhReading;
import stillroom.science.dosing.Prescription;
import stillroom.science.equilibrium.Component;
import stillroom.science.equilibrium.EquilibriumSolver;
import stillroom.science.equilibrium.Solution;
import stillroom.science.equilibrium.StrongIon;
import stillroom.science.equilibrium.WaterModel;
import stillroom.science.meter.Drift;

class PhTasksTest {
    private static final PhConstants CONSTANTS = PhConstants.shipped();
    private static final Instant START = Instant.parse("2026-11-25T09:00:00Z");
    private static final Bench BOOK = book();

    private final List<LogEntry> log = new ArrayList<>();

    private static Bench book() {
        Bench book = Bench.book();
        book.card(
                "citric-acid-50",
                Family.ACID,
                Constituent.exactly("citric-acid", 0.5),
                Constituent.exactly("water", 0.5));
        book.card("bare", Family.ACID);
        return book;
    }

    private PhTasksTest add(BatchEvent event) {
        log.add(new LogEntry(log.size() + 1, START.plusSeconds(60L * log.size()), "maker", event));
        return this;
    }

    private PhTasksTest pour(String material, String grams, Purpose purpose) {
        return add(new BatchEvent.Poured(
                "kettle", Optional.empty(), material, Optional.empty(), Grams.of(grams), purpose, "", "", ""));
    }

    private PhTasksTest ph(double value) {
        return add(new BatchEvent.ReadingTaken(
                ReadingKind.PH, "kettle", Optional.of(value), "pH", "", Map.of("measured", "neat")));
    }

    private PhTasksTest sample(String grams, String percent) {
        return add(new BatchEvent.TitrationBegun(
                "kettle",
                Grams.of(grams),
                "citric-acid-50",
                Optional.empty(),
                Percent.of(percent),
                Optional.empty(),
                Map.of()));
    }

    private PhTasksTest read(int titration, String added, double pH) {
        return add(new BatchEvent.TitrationRead(titration, Grams.of(added), pH));
    }

    /** A kilogram of 0.5 % benzoate. */
    private PhTasksTest benzoate() {
        return pour("water", "995", Purpose.LINE).pour("sodium-benzoate", "5", Purpose.LINE);
    }

    private PhTasks tasks(String corrector, double target) {
        PhWish wish = new PhWish(corrector, Optional.empty(), target, 0.2, Instrument.meter(0.02, 0.01));
        return new PhTasks(PhSession.of(log, "kettle"), wish, BOOK, CONSTANTS);
    }

    private static <T> T known(Outcome<T> outcome) {
        return outcome.match(value -> value, because -> {
            throw new AssertionError(because);
        });
    }

    private static String why(Outcome<?> outcome) {
        return outcome.match(value -> "known", because -> because);
    }

    /** 5 g of sodium benzoate (144.105 g/mol) in a kilogram: 0.034697 mol/kg of benzoic acid and of sodium. */
    @Test
    void theKnownChemistryIsPerKilogramOfTheBulk() {
        benzoate().ph(7.2).ph(7.1);
        DosingTask task = known(tasks("citric-acid-50", 5).bulk());
        Component acid = task.chemistry().components().get(0);
        assertThat(acid.system().name()).isEqualTo("benzoic-acid");
        assertThat(acid.molPerKg()).isEqualTo(5 / 144.105, within(1e-9));
        assertThat(task.chemistry().ions().get(0).molPerKg()).isEqualTo(5 / 144.105, within(1e-9));
        assertThat(task.chemistry().waterMassFraction()).isEqualTo(0.995, within(1e-12));
    }

    /** 50 % citric acid (192.123 g/mol): 2.6025 mol/kg, and its own half of water. */
    @Test
    void theCorrectorIsAPremixWithItsOwnWater() {
        benzoate().ph(7.2);
        DosingTask task = known(tasks("citric-acid-50", 5).bulk());
        assertThat(task.corrector().components().get(0).molPerKg()).isEqualTo(500 / 192.123, within(1e-9));
        assertThat(task.corrector().waterMassFraction()).isEqualTo(0.5);
    }

    @Test
    void aCorrectorWithoutStrengthIsExplained() {
        benzoate().ph(7.2);
        assertThat(why(tasks("bare", 5).bulk())).contains("bare has no strength");
        assertThat(why(tasks("sodium-chloride", 5).bulk())).contains("no strength");
    }

    @Test
    void waterPouredInAfterwardsMakesEarlierReadingsCountForNothing() {
        benzoate().ph(7.2).sample("50", "5").read(4, "0", 7.2).read(4, "1", 5.5);
        assertThat(PhSession.of(log, "kettle").readings()).hasSize(3);
        pour("water", "100", Purpose.CORRECTION_WATER);
        PhSession after = PhSession.of(log, "kettle");
        assertThat(after.readings()).isEmpty();
        assertThat(after.forgotten()).isEqualTo(1);
        assertThat(after.titration()).isEmpty();
    }

    /** The sample takes its share of the acid that was in the bulk already, and leaves the rest there. */
    @Test
    void aSampleCarriesItsShareOfEarlierAdditions() {
        benzoate()
                .ph(7.2)
                .pour("citric-acid-50", "2", Purpose.CORRECTION_ACID)
                .sample("100.2", "5")
                .read(5, "0", 5.6);
        DosingTask task = known(tasks("citric-acid-50", 5).bulk());
        PhReading inSample = task.readings().get(1);
        assertThat(inSample.liquidGrams()).isEqualTo(100, within(1e-9));
        assertThat(inSample.additions().get(0).grams()).isEqualTo(0.2, within(1e-9));
        assertThat(task.bulkGrams()).isEqualTo(900, within(1e-9));
        assertThat(task.bulkAdditions()).extracting(Addition::grams).containsExactly(1.8);
    }

    /** The dosed bulk, by the solver, comes within a few hundredths: readings are rounded to 0.01 pH, repeatability is 0.02. */
    @Test
    void theDoseFromTheSampleBringsTheBulkToTheTarget() {
        benzoate();
        ph(Math.rint(pH(50, 0, 0.05) * 100) / 100).sample("50", "5");
        for (String grams : new String[] {"0", "0.2", "0.5", "0.8", "1.1"}) {
            read(4, grams, Math.rint(pH(50, Double.parseDouble(grams), 0.05) * 100) / 100);
        }
        DosingAnswer answer = Dosing.next(known(tasks("citric-acid-50", 5.0).bulk()));
        assertThat(answer).isInstanceOf(DosingAnswer.Proposed.class);
        Dose dose = ((DosingAnswer.Proposed) answer).dose();
        assertThat(pH(950, dose.gramsToTarget(), 1)).isEqualTo(5.0, within(0.03));
        assertThat(dose.stage()).isEqualTo(Dose.Stage.FIRST_PART);
        assertThat(dose.grams()).isEqualTo(0.7 * dose.lowGrams(), within(0.01));
    }

    /** Grams of the known chemistry with so much of the corrector at a dilution, by the solver. */
    private double pH(double sample, double grams, double massFraction) {
        DosingTask task = known(tasks("citric-acid-50", 5.0).bulk());
        Corrector dilution = task.corrector().dilutedTo(massFraction);
        double water = sample * task.chemistry().waterMassFraction() + grams * dilution.waterMassFraction();
        Solution solution = Solution.water(25);
        for (Component component : task.chemistry().components()) {
            solution = solution.with(component.system(), component.molPerKg() * sample / water);
        }
        for (StrongIon ion : task.chemistry().ions()) {
            solution = solution.withIon(ion.name(), ion.charge(), ion.molPerKg() * sample / water);
        }
        for (Component component : dilution.components()) {
            solution = solution.with(component.system(), component.molPerKg() * grams / water);
        }
        return new EquilibriumSolver(WaterModel.STANDARD).solve(solution).pH();
    }

    @Test
    void theSampleIsTitratedWithADilutionThatTheBalanceSees() {
        benzoate().ph(7.6);
        Prescription prescribed = known(tasks("citric-acid-50", 5.0).prescription(7.6));
        assertThat(prescribed.sampleGrams()).isEqualTo(50);
        assertThat(prescribed.dilutionMassFraction()).isLessThanOrEqualTo(0.2);
        assertThat(prescribed.expectedGrams()).isGreaterThanOrEqualTo(50 * 0.01);
        assertThat(why(tasks("citric-acid-50", 9.0).prescription(7.6))).contains("takes a base");
    }

    @Test
    void theLogRefusesASampleLargerThanTheBatchAndTheSameAdditionTwice() {
        benzoate().sample("50", "5").read(3, "0", 7.6);
        BatchState state = BatchState.of(log);
        BenchFacts facts = new BenchFacts(List.of(), List.of(), BOOK, LocalDate.of(2026, 11, 25));
        assertThat(BatchRules.problems(
                        state,
                        new BatchEvent.TitrationBegun(
                                "kettle",
                                Grams.of("2000"),
                                "citric-acid-50",
                                Optional.empty(),
                                Percent.of("5"),
                                Optional.empty(),
                                Map.of()),
                        facts))
                .anyMatch(problem ->
                        problem.field().equals("sample") && problem.sentence().contains("more than is in"));
        assertThat(BatchRules.problems(state, new BatchEvent.TitrationRead(3, Grams.of("0.0"), 7.5), facts))
                .anyMatch(problem -> problem.field().equals("added"));
        assertThat(BatchRules.problems(state, new BatchEvent.TitrationRead(3, Grams.of("1"), 15), facts))
                .anyMatch(problem -> problem.field().equals("pH"));
        assertThat(state.vessel("kettle").orElseThrow().mixture().net()).isEqualTo(Grams.of("950"));
    }

    @Test
    void whatAnEarlierBatchTook() {
        benzoate()
                .ph(7.6)
                .pour("citric-acid-50", "2", Purpose.CORRECTION_ACID)
                .ph(5.4)
                .pour("citric-acid-50", "0.5", Purpose.CORRECTION_ACID)
                .ph(5.1);
        Batch batch = new Batch(7, "261125-1", 1, Optional.empty(), LocalDate.of(2026, 11, 25));
        DosedBefore dosed = DosedBefore.of(batch, log).get(0);
        assertThat(dosed.grams()).isEqualTo(Grams.of("2.5"));
        assertThat(dosed.percent().value().doubleValue()).isEqualTo(250 / 1002.5, within(1e-9));
        assertThat(dosed.from()).contains(7.6);
        assertThat(dosed.to()).contains(5.1);
        assertThat(dosed.pours()).isEqualTo(2);
    }

    @Test
    void theReservedCorrectionComesOutOfTheQsLine() {
        Formula before = Bench.formula("water", "q.s.", "sodium-benzoate", "0.5");
        ReservedCorrection reserve = ReservedCorrection.of("citric-acid-50", 0.2212, 0.25, 0.2911, "for the pH");
        assertThat(reserve.problems(before)).isEmpty();
        Formula after = reserve.in(before);
        Amount.ToReading amount = (Amount.ToReading) after.lines().get(2).amount();
        assertThat(amount.expected()).isEqualTo(Percent.of("0.25"));
        assertThat(amount.range().low()).isEqualTo(Percent.of("0.221"));
        assertThat(amount.range().high()).isEqualTo(Percent.of("0.292"));
        assertThat(reserve.in(after).lines()).hasSize(3);
        assertThat(reserve.problems(Bench.formula("water", "99.5", "sodium-benzoate", "0.5")))
                .hasSize(1);
    }

    @Test
    void aDriftIsToldFromNoise() {
        benzoate().ph(5.00).ph(5.01);
        assertThat(PhTrend.of(log, 0.02).get(0).drift().verdict()).isEqualTo(Drift.Verdict.NOISE);
        log.clear();
        benzoate();
        for (int day = 0; day < 5; day++) {
            log.add(new LogEntry(
                    3 + day,
                    START.plusSeconds(86_400L * day + 600),
                    "maker",
                    new BatchEvent.ReadingTaken(
                            ReadingKind.PH,
                            "kettle",
                            Optional.of(5.0 - 0.05 * day),
                            "pH",
                            "",
                            Map.of("measured", "neat"))));
        }
        PhTrend trend = PhTrend.of(log, 0.02).get(0);
        assertThat(trend.drift().verdict()).isEqualTo(Drift.Verdict.DRIFT);
        assertThat(trend.drift().perDay()).isEqualTo(-0.05, within(1e-9));
        assertThat(trend.days()).isEqualTo(4, within(1e-9));
        assertThat(trend.tooEarly()).isFalse();
    }

    @Test
    void readingsAMinuteApartOrBeforeTheLastAdditionTellNothingYet() {
        benzoate().ph(5.00).ph(5.07);
        PhTrend two = PhTrend.of(log, 0.02).get(0);
        assertThat(two.tooEarly()).isTrue();
        assertThat(two.tellableFrom()).isEqualTo(two.first().plusSeconds(20 * 3600));

        log.clear();
        benzoate().ph(6.0).pour("citric-acid-50", "2", Purpose.CORRECTION_ACID).ph(5.2);
        assertThat(PhTrend.of(log, 0.02)).isEmpty();
        benzoateReadAfter(19);
        benzoateReadAfter(19);
        assertThat(PhTrend.of(log, 0.02).get(0).readings()).isEqualTo(3);
        assertThat(PhTrend.of(log, 0.02).get(0).tooEarly()).isTrue();
        benzoateReadAfter(21);
        assertThat(PhTrend.of(log, 0.02).get(0).tooEarly()).isFalse();
    }

    private void benzoateReadAfter(int hours) {
        LogEntry last = log.get(log.size() - 1);
        log.add(new LogEntry(
                last.number() + 1,
                PhTrend.of(log, 0.02).stream()
                        .findFirst()
                        .map(PhTrend::first)
                        .orElse(last.at())
                        .plusSeconds(3600L * hours),
                "maker",
                new BatchEvent.ReadingTaken(
                        ReadingKind.PH, "kettle", Optional.of(5.2), "pH", "", Map.of("measured", "neat"))));
    }
}
