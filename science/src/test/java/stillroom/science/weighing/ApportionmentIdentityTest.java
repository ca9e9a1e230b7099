package stillroom.science.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Rules that hold for every rounding, tried on seeded random shares. */
class ApportionmentIdentityTest {
    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    @Test
    void residueKeepsSumHalfStepAndLimits() {
        Random random = new Random(41);
        int done = 0;
        for (int run = 0; run < 2000; run++) {
            List<Share> shares = randomShares(random, new String[] {"0.1", "0.01", "0.001"});
            BigDecimal whole = whole(shares);
            if (Apportionment.ontoResidue(shares, whole, 0) instanceof Apportioned.Exactly exactly) {
                done++;
                assertThat(whole(exactly.parts(), 0)).isEqualByComparingTo(whole);
                for (int i = 1; i < shares.size(); i++) {
                    assertRule(shares.get(i), exactly.parts().get(i));
                }
            }
        }
        assertThat(done).isGreaterThan(1900);
    }

    @Test
    void spreadKeepsSumAndStaysWithinOneStep() {
        Random random = new Random(42);
        for (int run = 0; run < 1000; run++) {
            List<Share> shares = randomShares(random, new String[] {"0.01"}).stream()
                    .map(share -> Share.free(share.exact(), share.step()))
                    .toList();
            BigDecimal whole = Steps.nearest(whole(shares), new BigDecimal("0.01"));
            Apportioned.Exactly exactly = (Apportioned.Exactly) Apportionment.spread(shares, whole);
            assertThat(whole(exactly.parts(), 0)).isEqualByComparingTo(whole);
            for (int i = 0; i < shares.size(); i++) {
                BigDecimal off = exactly.parts().get(i).subtract(shares.get(i).exact());
                assertThat(off.abs()).isLessThan(shares.get(i).step());
            }
        }
    }

    @Test
    void noStepBetweenFloorAndCeilingIsSaid() {
        Share narrow = new Share(
                new BigDecimal("0.15"),
                new BigDecimal("0.1"),
                Optional.of(new BigDecimal("0.14")),
                Optional.of(new BigDecimal("0.16")));
        Share water = Share.free(new BigDecimal("9.85"), new BigDecimal("0.1"));
        Apportioned outcome = Apportionment.ontoResidue(List.of(water, narrow), BigDecimal.TEN, 0);
        assertThat(outcome).isInstanceOf(Apportioned.Impossible.class);
        assertThat(((Apportioned.Impossible) outcome).conflict()).containsExactly(1);
    }

    private static void assertRule(Share share, BigDecimal part) {
        assertThat(share.allows(part)).isTrue();
        assertThat(part.remainder(share.step())).isEqualByComparingTo("0");
        BigDecimal off = part.subtract(share.exact()).abs();
        BigDecimal most = share.limited() ? share.step() : share.step().divide(TWO, MathContext.DECIMAL64);
        assertThat(off).isLessThanOrEqualTo(most);
    }

    private static List<Share> randomShares(Random random, String[] steps) {
        List<Share> shares = new ArrayList<>();
        shares.add(Share.free(BigDecimal.valueOf(100 + random.nextInt(400)), new BigDecimal(steps[0])));
        int count = 1 + random.nextInt(25);
        for (int i = 0; i < count; i++) {
            BigDecimal exact = BigDecimal.valueOf(random.nextInt(1_000_000), 5);
            BigDecimal step = new BigDecimal(steps[random.nextInt(steps.length)]);
            boolean capped = random.nextInt(4) == 0;
            boolean floored = !capped && random.nextInt(4) == 0;
            shares.add(new Share(
                    exact,
                    step,
                    floored ? Optional.of(exact) : Optional.empty(),
                    capped ? Optional.of(exact) : Optional.empty()));
        }
        return shares;
    }

    private static BigDecimal whole(List<Share> shares) {
        return whole(shares.stream().map(Share::exact).toList(), 0);
    }

    private static BigDecimal whole(List<BigDecimal> parts, int from) {
        return parts.subList(from, parts.size()).stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
