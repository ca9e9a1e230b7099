package stillroom.formulary.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static stillroom.formulary.plan.Workbench.g;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PlannedShareTest {
    /** By hand: 9 g of 1000 g on a step of 0.1 g, s = 0.41 * 0.1 * root 2 = 0.05798 g, so about 0.0058 % (JCGM 100:2008). */
    @Test
    void theUncertaintyOfAPreservativeComesFromItsWeighing() {
        List<Balance> balances = List.of(Workbench.KITCHEN);
        Plan plan = new Planner(Workbench.BOOK, new Bench(balances, List.of(), Tolerances.USUAL), Workbench.TODAY)
                .plan(Workbench.toner(), new BatchSize.Stated(g("1000")), Map.of());
        PlannedShare share = PlannedShare.of(plan, balances).stream()
                .filter(one -> one.lineId().equals("p"))
                .findFirst()
                .orElseThrow();
        assertThat(share.deviation().doubleValue()).isCloseTo(0.005746, offset(2e-6));
        assertThat(share.percent().value()).isEqualByComparingTo("0.9");
    }
}
