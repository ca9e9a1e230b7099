package stillroom.science.dosing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** One hundred invented liquids, hidden from the fit. */
class DosingSimulationTest {

    private static final long SEED = 1811;

    private record Tally(int liquids, int landed, int overshot, int pours, int refusals, int covered) {
        @Override
        public String toString() {
            return String.format(
                    "%d of %d within 0.1, first pour overshot in %d, %.1f pours each, %d refusals, interval held in %d",
                    landed, liquids, overshot, pours / (double) liquids, refusals, covered);
        }
    }

    private static Tally simulate(long seed, int liquids, int additions, double noise, double bias) {
        return simulate(seed, liquids, additions, noise, bias, false);
    }

    private static Tally simulate(
            long seed, int liquids, int additions, double noise, double bias, boolean evenPortions) {
        SplittableRandom random = new SplittableRandom(seed);
        int landed = 0;
        int overshot = 0;
        int pours = 0;
        int refusals = 0;
        int covered = 0;
        for (int i = 0; i < liquids; i++) {
            HiddenLiquid liquid = HiddenLiquid.next(random);
            BenchSimulation bench = new BenchSimulation(liquid, random, noise, bias);
            BenchSimulation.Outcome outcome = (evenPortions ? bench.withEvenPortions() : bench).run(additions);
            landed += outcome.landed() ? 1 : 0;
            overshot += outcome.firstOvershot() ? 1 : 0;
            pours += outcome.pours();
            refusals += outcome.refusals();
            covered += outcome.covered() ? 1 : 0;
        }
        return new Tally(liquids, landed, overshot, pours, refusals, covered);
    }

    @Test
    void fiveAdditionsLandInTheBand() {
        Tally tally = simulate(SEED, 100, 5, 0.02, 0);
        report("five additions, noise 0.02", tally);
        assertThat(tally.landed()).isGreaterThanOrEqualTo(98);
        assertThat(tally.overshot()).isLessThanOrEqualTo(2);
        assertThat(tally.covered()).isGreaterThanOrEqualTo(90); // at 95 % fewer has a chance of one in ninety
    }

    @Test
    void anotherHundredLandsAsWell() {
        Tally tally = simulate(SEED + 1, 100, 5, 0.02, 0);
        assertThat(tally.landed()).isGreaterThanOrEqualTo(98);
        assertThat(tally.overshot()).isLessThanOrEqualTo(2);
    }

    /** Five even portions that end anywhere between 0.6 and 1.6 of the way. */
    @Test
    void evenPortionsLandAsWell() {
        Tally tally = simulate(SEED + 2, 100, 5, 0.02, 0, true);
        report("five even portions, noise 0.02", tally);
        assertThat(tally.landed()).isGreaterThanOrEqualTo(98);
        assertThat(tally.overshot()).isLessThanOrEqualTo(2);
    }

    /** Reported without a target; the assertion only guards against a collapse. */
    @Test
    void twoAdditions() {
        Tally tally = simulate(SEED, 100, 2, 0.02, 0);
        report("two additions, noise 0.02", tally);
        assertThat(tally.landed()).isGreaterThan(80);
        assertThat(tally.overshot()).isLessThan(10);
    }

    /** Reported without a target, as above. */
    @Test
    void noisierMeter() {
        Tally tally = simulate(SEED, 100, 5, 0.05, 0);
        report("five additions, noise 0.05", tally);
        assertThat(tally.landed()).isGreaterThan(80);
        assertThat(tally.overshot()).isLessThan(10);
    }

    /** An electrode that is wrong by the whole band: about half must miss, no computation can see it. */
    @Test
    void biasedElectrode() {
        Tally tally = simulate(SEED, 100, 5, 0.02, 0.1);
        report("five additions, noise 0.02, electrode 0.1 too high", tally);
        assertThat(tally.landed()).isBetween(30, 90);
        assertThat(tally.overshot()).isLessThan(10);
    }

    private static void report(String what, Tally tally) {
        System.out.println(what + ": " + tally);
    }
}
