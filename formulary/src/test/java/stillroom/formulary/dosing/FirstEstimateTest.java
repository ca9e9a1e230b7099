package stillroom.formulary.dosing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.constants.PhConstants;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.judgement.Bench;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.StarterLibrary;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;
import stillroom.science.dosing.DosingTask;
import stillroom.science.dosing.Instrument;
import stillroom.science.equilibrium.Component;
import stillroom.science.equilibrium.EquilibriumSolver;
import stillroom.science.equilibrium.Solution;
import stillroom.science.equilibrium.StrongIon;
import stillroom.science.equilibrium.WaterModel;

/** What dosing takes as known of a liquid has the pH that the formula's page tells. */
class FirstEstimateTest {
    private static final Instant START = Instant.parse("2026-11-25T09:00:00Z");
    private static final MaterialBook LIBRARY = StarterLibrary.load();
    private static final String SARCOSINATE = "sodium-lauroyl-sarcosinate-30 20 citric-acid 0.6";
    private static final String CARBOMER = "carbomer 0.5 sodium-hydroxide-10 2.1 potassium-sorbate 0.2";
    private static final String BETAINE =
            "cocamidopropyl-betaine-30 15 sodium-benzoate 0.5 citric-acid 0.4 sodium-chloride 1";

    private final List<LogEntry> log = new ArrayList<>();

    @ParameterizedTest
    @ValueSource(strings = {SARCOSINATE, CARBOMER, BETAINE})
    void theEstimateHasThePhOfTheFormula(String parts) {
        assertThat(pH(known(tasks(parts))))
                .as("the same solver on the same amounts")
                .isEqualTo(ofTheFormula(parts), within(1e-6));
    }

    /** Its range of constants cannot be fitted away, a curve can. */
    @Test
    void aTitratedSampleTellsHowASurfactantReallyBuffers() {
        PhTasks before = tasks(SARCOSINATE);
        assertThat(known(before).chemistry().components()).hasSize(2);
        add(new BatchEvent.TitrationBegun(
                "kettle",
                Grams.of("50"),
                "citric-acid",
                Optional.empty(),
                Percent.of("10"),
                Optional.empty(),
                Map.of()));
        int begun = log.size();
        for (String[] read : new String[][] {{"0", "5.6"}, {"0.3", "5.3"}, {"0.6", "5.0"}}) {
            add(new BatchEvent.TitrationRead(begun, Grams.of(read[0]), Double.parseDouble(read[1])));
        }
        assertThat(known(tasks()).chemistry().components())
                .extracting(component -> component.system().name())
                .containsExactly("citric-acid");
    }

    private static double ofTheFormula(String parts) {
        String[] pairs = ("water-purified q.s. " + parts).split(" ");
        return Bench.EVALUATOR
                .evaluate(Subjects.of(Bench.formula(pairs), Brief.of(ProductType.TONER)), LIBRARY, Bench.TODAY)
                .figures()
                .ph()
                .match(figure -> figure.value(), because -> {
                    throw new AssertionError(because);
                });
    }

    /** A kilogram of it. */
    private PhTasks tasks(String parts) {
        String[] words = parts.split(" ");
        BigDecimal water = BigDecimal.valueOf(1000);
        for (int i = 0; i < words.length; i += 2) {
            BigDecimal grams = new BigDecimal(words[i + 1]).movePointRight(1);
            water = water.subtract(grams);
            pour(words[i], grams);
        }
        pour("water-purified", water);
        add(new BatchEvent.ReadingTaken(
                ReadingKind.PH, "kettle", Optional.of(5.6), "pH", "", Map.of("measured", "neat")));
        return tasks();
    }

    private PhTasks tasks() {
        PhWish wish = new PhWish("citric-acid", Optional.empty(), 5, 0.2, Instrument.meter(0.02, 0.01));
        return new PhTasks(PhSession.of(log, "kettle"), wish, LIBRARY, PhConstants.shipped());
    }

    private void pour(String material, BigDecimal grams) {
        add(new BatchEvent.Poured(
                "kettle", Optional.empty(), material, Optional.empty(), new Grams(grams), Purpose.LINE, "", "", ""));
    }

    private void add(BatchEvent event) {
        log.add(new LogEntry(log.size() + 1, START.plusSeconds(60L * log.size()), "maker", event));
    }

    private static DosingTask known(PhTasks tasks) {
        return tasks.bulk().match(task -> task, because -> {
            throw new AssertionError(because);
        });
    }

    private static double pH(DosingTask task) {
        double water = task.chemistry().waterMassFraction();
        Solution solution = Solution.water(25);
        for (Component component : task.chemistry().components()) {
            solution = solution.with(component.system(), component.molPerKg() / water);
        }
        for (StrongIon ion : task.chemistry().ions()) {
            solution = solution.withIon(ion.name(), ion.charge(), ion.molPerKg() / water);
        }
        return new EquilibriumSolver(WaterModel.STANDARD).solve(solution).pH();
    }
}
