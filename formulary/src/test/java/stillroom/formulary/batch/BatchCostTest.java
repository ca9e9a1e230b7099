package stillroom.formulary.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static stillroom.formulary.plan.Workbench.g;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.material.Lot;
import stillroom.formulary.plan.Workbench;
import stillroom.formulary.quantity.Money;
import stillroom.formulary.quantity.Price;

/** Arithmetic by hand on invented prices. */
class BatchCostTest {
    private static final BatchState STATE = new LogWriter()
            .vessel("pot")
            .pour("pot", "", "oil-1", g("200"), Purpose.LINE)
            .pour("pot", "", "oil-1", g("-20"), Purpose.LINE)
            .pour("pot", "", "wax-1", g("50"), Purpose.LINE)
            .pour("pot", "", "active-1", g("1"), Purpose.CORRECTION_OTHER)
            .add(new BatchEvent.Filled("pot", "tin", 4, g("220"), Optional.empty(), ""))
            .state();

    private static final BatchCost COST = BatchCost.of(
            STATE,
            new CostFacts(
                    List.of(priced("oil-1", "12", "1000"), priced("wax-1", "9", "250")),
                    Workbench.BOOK,
                    Money.of("0.80"),
                    45,
                    Money.of("20"),
                    Money.of("3"),
                    Money.ZERO));

    /** 200 g of oil at 0.012 (what was taken back is paid for), 50 g of wax at 0.036: 2.40 + 1.80. */
    @Test
    void everythingPutInIsPaidFor() {
        assertThat(COST.material()).isEqualTo(Money.of("4.2"));
        assertThat(COST.unpriced()).containsExactly("active-1");
    }

    /** 4.20 + 4 tins 3.20 + 45 min 15.00 + 3.00 = 25.40; four containers. */
    @Test
    void costPerContainerAndItsPrice() {
        assertThat(COST.total()).isEqualTo(Money.of("25.4"));
        assertThat(COST.perContainer()).contains(Money.of("6.35"));
        assertThat(COST.priceForMargin(BigDecimal.valueOf(50))).contains(Money.of("12.7"));
        assertThat(COST.riseOf("oil-1", BigDecimal.TEN)).contains(Money.of("0.06"));
    }

    private static Lot priced(String material, String paid, String grams) {
        Lot lot = Workbench.lot("lot-" + material, material, Lot.State.RELEASED, "");
        return new Lot(
                lot.code(),
                material,
                "",
                "",
                lot.received(),
                lot.receivedOn(),
                lot.opened(),
                lot.expires(),
                Optional.of(new Price(Money.of(paid), g(grams))),
                lot.state(),
                "");
    }
}
