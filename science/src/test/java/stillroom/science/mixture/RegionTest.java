package stillroom.science.mixture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class RegionTest {
    private static final double INFINITY = Double.POSITIVE_INFINITY;

    @Test
    void boundsThatExcludeAHundredPercentAreSaid() {
        assertThat(region(List.of(.5, .4, .3), List.of(1.0, 1.0, 1.0)).problems())
                .singleElement()
                .asString()
                .contains("120 %");
        assertThat(region(List.of(0.0, 0.0, 0.0), List.of(.5, .2, .2)).problems())
                .singleElement()
                .asString()
                .contains("90 %");
        assertThat(region(List.of(0.0, .6, 0.0), List.of(1.0, .5, 1.0)).problems())
                .singleElement()
                .asString()
                .contains("Component 2");
    }

    @Test
    void theSmallestConflictIsNamedAndNothingElse() {
        MixtureRegion region = region(
                List.of(0.0, 0.0, 0.2, 0.0),
                List.of(1.0, 1.0, 1.0, 0.1),
                new LinearConstraint(List.of(1.0, 1.0, 0.0, 0.0), -INFINITY, 0.3),
                new LinearConstraint(List.of(0.0, 0.0, 1.0, 0.0), -INFINITY, 0.4),
                new LinearConstraint(List.of(1.0, 0.0, 1.0, 0.0), 0.0, 5.0));
        assertThat(region.problems())
                .singleElement()
                .asString()
                .contains("component 4 at most 10 %")
                .contains("constraint 1 at most 0.3")
                .contains("constraint 2 at most 0.4")
                .doesNotContain("component 3")
                .doesNotContain("constraint 3");
    }

    @Test
    void cornersKeepEveryLimitAndEdgesJoinThem() {
        MixtureRegion region = region(
                List.of(.05, .05, .1, 0.0),
                List.of(.5, .4, .6, .3),
                new LinearConstraint(List.of(1.0, -1.0, 0.0, 0.0), -0.1, 0.3));
        Polytope body = region.polytope();
        assertThat(body.vertices()).allMatch(corner -> region.contains(corner, 1e-9));
        assertThat(body.edgeMidpoints()).allMatch(middle -> region.contains(middle, 1e-9));
        assertThat(body.dimension()).isEqualTo(3);
        int faces = body.planeCentroids().size();
        assertThat(body.vertices().size() - body.edgeMidpoints().size() + faces)
                .describedAs("Euler: corners - edges + faces of a body")
                .isEqualTo(2);
        assertThat(body.facetCentroids()).hasSize(faces);
    }

    @Test
    void aPointIsARegionToo() {
        assertThat(region(List.of(.5, .5), List.of(.5, .5)).polytope().vertices())
                .hasSize(1);
    }

    private static MixtureRegion region(List<Double> lower, List<Double> upper, LinearConstraint... constraints) {
        return new MixtureRegion(lower, upper, List.of(constraints));
    }
}
