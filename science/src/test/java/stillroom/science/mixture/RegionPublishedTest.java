package stillroom.science.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class RegionPublishedTest {

    /** Source: lawson-2015, bounds of the example of its function for extreme vertices; corners recomputed. */
    @Test
    void threeBoundedComponentsHaveFiveCorners() {
        MixtureRegion region = new MixtureRegion(List.of(0.0, 0.10, 0.05), List.of(0.80, 0.95, 0.50), List.of());
        List<double[]> expected = List.of(
                new double[] {0, .5, .5},
                new double[] {0, .95, .05},
                new double[] {.4, .1, .5},
                new double[] {.8, .1, .1},
                new double[] {.8, .15, .05});
        List<double[]> corners = region.polytope().vertices();
        assertThat(corners).hasSize(5);
        for (double[] one : expected) {
            assertThat(corners.stream()
                            .mapToDouble(corner -> distance(corner, one))
                            .min()
                            .orElse(1))
                    .describedAs(Arrays.toString(one))
                    .isCloseTo(0, within(1e-12));
        }
    }

    /** Bounds read at the source of lawson-2015 (snee-1976); the count of 170 is our own exact enumeration. */
    @Test
    void eightComponentsHaveAsManyCornersAsPlainEnumerationFinds() {
        MixtureRegion region = new MixtureRegion(
                List.of(.10, .05, 0.0, 0.0, .10, .05, 0.0, 0.0),
                List.of(.45, .50, .10, .40, .60, .20, .05, .05),
                List.of());
        assertThat(region.polytope().vertices()).hasSize(170);
        assertThat(enumerated(region)).isEqualTo(170);
    }

    private static double distance(double[] a, double[] b) {
        double most = 0;
        for (int i = 0; i < a.length; i++) {
            most = Math.max(most, Math.abs(a[i] - b[i]));
        }
        return most;
    }

    /** All but one component at a bound, the last one within its own: no degenerate corners here. */
    private static int enumerated(MixtureRegion region) {
        int q = region.components();
        int count = 0;
        for (int open = 0; open < q; open++) {
            for (int set = 0; set < 1 << (q - 1); set++) {
                double rest = 1;
                int bit = 0;
                for (int i = 0; i < q; i++) {
                    if (i != open) {
                        rest -= (set >> bit & 1) == 1
                                ? region.upper().get(i)
                                : region.lower().get(i);
                        bit++;
                    }
                }
                boolean strictlyWithin = rest > region.lower().get(open) + 1e-9
                        && rest < region.upper().get(open) - 1e-9;
                count += strictlyWithin ? 1 : 0;
            }
        }
        return count + degenerate(region);
    }

    /** Corners at which every component is at a bound, each counted once. */
    private static int degenerate(MixtureRegion region) {
        int q = region.components();
        int count = 0;
        for (int set = 0; set < 1 << q; set++) {
            double sum = 0;
            for (int i = 0; i < q; i++) {
                sum += (set >> i & 1) == 1
                        ? region.upper().get(i)
                        : region.lower().get(i);
            }
            count += Math.abs(sum - 1) < 1e-9 ? 1 : 0;
        }
        return count;
    }
}
