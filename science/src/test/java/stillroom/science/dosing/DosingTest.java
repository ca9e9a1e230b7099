package stillroom.science.dosing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import stillroom.science.equilibrium.AcidBase;
import stillroom.science.equilibrium.Component;
import stillroom.science.equilibrium.EquilibriumSolver;
import stillroom.science.equilibrium.Solution;
import stillroom.science.equilibrium.StrongIon;
import stillroom.science.equilibrium.WaterModel;

/** Doses for liquids whose answer is known. */
class DosingTest {

    private static final AcidBase ACETIC = AcidBase.of("acetic", 0, 4.756);
    private static final Corrector SODA = HiddenLiquid.SODA_10;
    private static final Instrument METER = Instrument.meter(0.01, 0.01);

    /** 0.05 mol/kg acetic acid in water with a tenth of it neutralised, per kilogram of liquid. */
    private static double vinegarPh(double grams, double sodaGrams, Corrector soda) {
        double water = grams + sodaGrams * soda.waterMassFraction();
        double sodium = 0.005 * grams + soda.ions().get(0).molPerKg() * sodaGrams;
        Solution solution =
                Solution.water(25).with(ACETIC, 0.05 * grams / water).withIon("Na+", 1, sodium / water);
        return new EquilibriumSolver(WaterModel.STANDARD).solve(solution).pH();
    }

    private static List<PhReading> titration(double... grams) {
        Corrector dilute = SODA.dilutedTo(0.1);
        List<PhReading> readings = new ArrayList<>();
        for (double poured : grams) {
            double pH = Math.rint(100 * vinegarPh(100, poured, dilute)) / 100;
            readings.add(new PhReading(
                    Vessel.SAMPLE, 100, poured == 0 ? List.of() : List.of(new Addition(dilute, poured)), pH));
        }
        return readings;
    }

    private static DosingTask task(List<PhReading> readings, double target, Instrument instrument) {
        return new DosingTask(KnownChemistry.none(1), readings, 2000, List.of(), SODA, target, 0.1, instrument);
    }

    private static Dose dose(DosingTask task) {
        return ((DosingAnswer.Proposed) Dosing.next(task)).dose();
    }

    /** Truth by bisection on the liquid itself. */
    private static double trueGrams(double target) {
        double low = 0;
        double high = 100;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (vinegarPh(2000, middle, SODA) < target) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    @Test
    void fiveAdditionsGiveTheDoseOfTheBulk() {
        Dose dose = dose(task(titration(0, 2, 5, 8, 11, 14), 5.0, METER));
        assertThat(trueGrams(5.0)).isBetween(dose.lowGrams(), dose.highGrams());
        assertThat(dose.gramsToTarget() / trueGrams(5.0)).isCloseTo(1, within(0.03));
        assertThat(dose.stage()).isEqualTo(Dose.Stage.FIRST_PART);
        assertThat(dose.grams()).isCloseTo(0.7 * dose.lowGrams(), within(0.0101)); // rounded down to the step
        assertThat(dose.cautions()).contains(Caution.EYES_AND_GLOVES, Caution.HEAT_OF_HYDROXIDE);
    }

    /** Buffer capacity at half neutralisation: 2.303 c/4 = 0.0288 mol/kg per pH for c = 0.05 (Van Slyke 1922). */
    @Test
    void bufferCapacityIsRecovered() {
        List<PhReading> readings = titration(0, 2, 5, 8, 11, 14, 17);
        double sodium = 0.02;
        double grams = sodium * 2000 / SODA.ions().get(0).molPerKg();
        DosingTask halfWay = new DosingTask(
                KnownChemistry.none(1), readings, 2000, List.of(new Addition(SODA, grams)), SODA, 5.3, 0.1, METER);
        assertThat(dose(halfWay).bufferCapacityMolPerKg()).isCloseTo(0.0288, within(0.0025));
    }

    @Test
    void twoReadingsGiveAWiderIntervalThanSix() {
        Dose two = dose(task(titration(0, 5), 5.0, METER));
        Dose six = dose(task(titration(0, 2, 5, 8, 11, 14), 5.0, METER));
        assertThat(two.highGrams() / two.lowGrams()).isGreaterThan(six.highGrams() / six.lowGrams());
        assertThat(trueGrams(5.0)).isBetween(two.lowGrams(), two.highGrams());
    }

    /** Knowing the acid from the recipe makes two readings nearly as good as the truth. */
    @Test
    void knownChemistryCounts() {
        KnownChemistry known = new KnownChemistry(
                List.of(new Component(ACETIC, 0.05)), List.of(new StrongIon("Na+", 1, 0.005)), 1, 25);
        DosingTask blind = task(titration(0, 5), 5.0, METER);
        DosingTask informed = new DosingTask(known, blind.readings(), 2000, List.of(), SODA, 5.0, 0.1, METER);
        double truth = trueGrams(5.0);
        assertThat(Math.abs(dose(informed).gramsToTarget() - truth))
                .isLessThan(Math.abs(dose(blind).gramsToTarget() - truth));
    }

    @Test
    void afterTheFirstPourTheRestIsProposed() {
        List<PhReading> readings = titration(0, 2, 5, 8, 11, 14);
        Dose first = dose(task(readings, 5.0, METER));
        List<Addition> poured = List.of(new Addition(SODA, first.grams()));
        double pH = Math.rint(100 * vinegarPh(2000, first.grams(), SODA)) / 100;
        readings.add(new PhReading(Vessel.BULK, 2000, poured, pH));
        Dose rest = dose(new DosingTask(KnownChemistry.none(1), readings, 2000, poured, SODA, 5.0, 0.1, METER));
        assertThat(rest.stage()).isEqualTo(Dose.Stage.REST);
        assertThat(vinegarPh(2000, first.grams() + rest.grams(), SODA)).isCloseTo(5.0, within(0.05));
    }

    @Test
    void stripsAdviseHalfAStep() {
        Dose dose = dose(task(titration(0, 8), 5.0, Instrument.strips(0.01)));
        assertThat(dose.stage()).isEqualTo(Dose.Stage.HALF_STEP);
        assertThat(dose.grams()).isCloseTo(dose.gramsToTarget() / 2, within(0.0101));
    }

    @Test
    void nothingIsPouredIntoABulkThatIsRight() {
        DosingAnswer answer = Dosing.next(task(titration(0, 2, 5, 8, 11), 3.80, METER));
        String said = answer.match(proposed -> "pour", inBand -> "in band", refused -> "no");
        assertThat(vinegarPh(2000, 0, SODA)).isCloseTo(3.80, within(0.05));
        assertThat(said).isEqualTo("in band");
    }

    @Test
    void curvePassesThroughTheDose() {
        DosingTask task = task(titration(0, 2, 5, 8, 11, 14), 5.0, METER);
        Dose dose = dose(task);
        List<CurvePoint> curve = Dosing.curve(task, dose.gramsToTarget(), 11);
        assertThat(curve).hasSize(11);
        assertThat(curve.get(10).pH()).isCloseTo(5.0, within(1e-6));
        assertThat(curve).allSatisfy(point -> assertThat(point.pH()).isBetween(point.low(), point.high()));
    }

    @Test
    void counterCorrectionSaysItsPrice() {
        List<PhReading> readings = titration(0, 2, 5, 8, 11, 14);
        List<Addition> tooMuch = List.of(new Addition(SODA, 1.2 * trueGrams(5.0)));
        DosingTask task = new DosingTask(
                KnownChemistry.none(1), readings, 2000, tooMuch, HiddenLiquid.CITRIC_50, 5.0, 0.1, METER);
        Dose back = dose(task);
        CounterCorrection price = CounterCorrection.of(task, back);
        assertThat(price.grams()).isPositive();
        assertThat(price.ionicStrengthRise()).isPositive();
        assertThat(price.leavingIsWithinBand()).isFalse();
        // A fifth of the soda was too much: that many equivalents are cancelled.
        double surplus = 0.2 * trueGrams(5.0) * SODA.ions().get(0).molPerKg() / 2000;
        assertThat(price.saltMolPerKg()).isCloseTo(surplus, within(0.15 * surplus));
    }
}
