package stillroom.science.dosing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;
import stillroom.science.dosing.Refusal.Kind;
import stillroom.science.equilibrium.StrongIon;

/** What cannot be fitted is explained. */
class RefusalTest {
    private static final Corrector SODA = HiddenLiquid.SODA_10;
    private static final Instrument METER = Instrument.meter(0.02, 0.01);

    private static PhReading reading(double grams, double pH) {
        return new PhReading(Vessel.SAMPLE, 50, grams == 0 ? List.of() : List.of(new Addition(SODA, grams)), pH);
    }

    private static List<Kind> kinds(double bulk, Corrector corrector, double target, PhReading... readings) {
        DosingTask task = new DosingTask(
                KnownChemistry.none(0.9), List.of(readings), bulk, List.of(), corrector, target, 0.1, METER);
        DosingAnswer answer = Dosing.next(task);
        assertThat(answer).isInstanceOf(DosingAnswer.Refused.class);
        List<Refusal> reasons = ((DosingAnswer.Refused) answer).reasons();
        assertThat(reasons).allSatisfy(reason -> assertThat(reason.sentence()).isNotBlank());
        return reasons.stream().map(Refusal::kind).toList();
    }

    @Test
    void aPhOfFifteen() {
        assertThat(kinds(1000, SODA, 6, reading(0, 5), reading(0.5, 15))).containsExactly(Kind.IMPOSSIBLE_PH);
        assertThat(kinds(1000, SODA, 15, reading(0, 5), reading(0.5, 5.3))).containsExactly(Kind.IMPOSSIBLE_PH);
    }

    @Test
    void readingsThatGoTheWrongWay() {
        assertThat(kinds(1000, SODA, 6, reading(0, 5), reading(0.5, 4.93))).containsExactly(Kind.WRONG_WAY);
    }

    @Test
    void lessThanThreeTimesTheNoiseIsNoise() {
        DosingTask task = new DosingTask(
                KnownChemistry.none(0.9),
                List.of(reading(0, 5), reading(0.05, 4.95), reading(1, 5.3)),
                1000,
                List.of(),
                SODA,
                6,
                0.1,
                METER);
        assertThat(Dosing.next(task)).isInstanceOf(DosingAnswer.Proposed.class);
    }

    @Test
    void identicalAdditions() {
        assertThat(kinds(1000, SODA, 6, reading(0, 5), reading(0.5, 5.2), reading(0.5, 5.4)))
                .containsExactly(Kind.IDENTICAL_ADDITIONS);
    }

    @Test
    void aSampleLargerThanTheBulk() {
        assertThat(kinds(40, SODA, 6, reading(0, 5), reading(0.5, 5.2)))
                .containsOnly(Kind.SAMPLE_EXCEEDS_BULK)
                .hasSize(2);
    }

    /** The bulk and a sample of it, both before any addition, differ by 0.7 pH. */
    @Test
    void readingsThatNoOneLiquidGives() {
        PhReading bulk = new PhReading(Vessel.BULK, 1000, List.of(), 5.7);
        assertThat(kinds(1000, SODA, 6, bulk, reading(0, 5), reading(0.5, 5.1), reading(1, 5.2), reading(2, 5.4)))
                .containsExactly(Kind.CONTRADICTORY_READINGS);
    }

    @Test
    void aCorrectorWithoutStrength() {
        Corrector water = new Corrector("nothing", List.of(), List.of(new StrongIon("Na+", 1, 0)), 1);
        assertThat(kinds(1000, water, 6, reading(0, 5), reading(0.5, 5.2))).containsExactly(Kind.NO_STRENGTH);
    }

    @Test
    void oneReading() {
        assertThat(kinds(1000, SODA, 6, reading(0, 5))).containsExactly(Kind.TOO_FEW_READINGS);
    }

    @Test
    void aBaseWhereAnAcidIsNeeded() {
        assertThat(kinds(1000, SODA, 4, reading(0, 5), reading(0.5, 5.4))).containsExactly(Kind.WRONG_CORRECTOR);
    }

    @Test
    void aTargetThatTheCorrectorCannotReach() {
        Corrector weak = HiddenLiquid.TRIETHANOLAMINE_85.dilutedTo(0.001);
        PhReading start = new PhReading(Vessel.SAMPLE, 50, List.of(), 5);
        PhReading later = new PhReading(Vessel.SAMPLE, 50, List.of(new Addition(SODA, 1)), 5.5);
        assertThat(kinds(1000, weak, 12, start, later)).containsExactly(Kind.OUT_OF_REACH);
    }

    @Test
    void aDoseThatTheBalanceCannotSee() {
        assertThat(kinds(60, SODA, 5.3, reading(0, 5), reading(0.02, 6))).containsExactly(Kind.BELOW_BALANCE);
    }

    @Test
    void impossibleMassesAreRefusedAtOnce() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Addition(SODA, -1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> KnownChemistry.none(0))
                .withMessageContaining("water");
        assertThat(kinds(-5, SODA, 6, reading(0, 5), reading(0.5, 5.2))).contains(Kind.IMPOSSIBLE_MASS);
    }
}
