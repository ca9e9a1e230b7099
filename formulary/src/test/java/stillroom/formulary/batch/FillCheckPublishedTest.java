package stillroom.formulary.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static stillroom.formulary.plan.Workbench.g;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import stillroom.formulary.Problem;
import stillroom.formulary.quantity.Grams;

class FillCheckPublishedTest {
    /**
     * Council Directive 76/211/EEC, annex II, 2.3: n = 30 and s = 0.9 allow a mean of 99.5471 g for 100 g. Half of the
     * containers d above, half below the mean have s = d * root (30/29), so d = 0.884873 gives s = 0.9.
     */
    @Test
    void aMeanJustBelowIsAcceptedAndOneFurtherBelowIsNot() {
        FillCheck passing = FillCheck.of(g("100"), thirty("99.6"), Grams.ZERO);
        assertThat(passing.deviation()).isCloseTo(0.9, offset(1e-5));
        assertThat(passing.leastMean()).isCloseTo(99.5471, offset(5e-5));
        assertThat(passing.passes()).isTrue();
        FillCheck failing = FillCheck.of(g("100"), thirty("99.5"), Grams.ZERO);
        assertThat(failing.passes()).isFalse();
        assertThat(failing.says()).hasSize(1);
    }

    /** The same directive, annex I, 2.4: 4.5 g at 100 g; nothing may be short by more than 9 g. */
    @Test
    void oneContainerShortByTwiceTheErrorIsNeverSold() {
        List<Grams> net = new ArrayList<>(thirty("103"));
        net.set(0, g("90.9"));
        FillCheck check = FillCheck.of(g("100"), net, Grams.ZERO);
        assertThat(check.tolerableError()).isEqualByComparingTo("4.5");
        assertThat(check.beyondTwice()).isEqualTo(1);
        assertThat(check.passes()).isFalse();
    }

    /** WELMEC guide 6.9: the check's error at most a fifth of the tolerable error, here 0.9 g. */
    @Test
    void unevenTaresAskForEachToBeWeighed() {
        assertThat(FillCheck.of(g("100"), thirty("101"), g("0.44")).says()).isEmpty();
        assertThat(FillCheck.of(g("100"), thirty("101"), g("0.46")).says()).hasSize(1);
    }

    @Test
    void whatCannotBeCheckedIsSaid() {
        assertThat(FillCheck.problems(g("4"), List.of(g("4"))))
                .extracting(Problem::field)
                .containsExactly("nominal", "net");
    }

    private static List<Grams> thirty(String mean) {
        List<Grams> net = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            net.add(i % 2 == 0 ? g(mean).plus(g("0.884873")) : g(mean).minus(g("0.884873")));
        }
        return net;
    }
}
