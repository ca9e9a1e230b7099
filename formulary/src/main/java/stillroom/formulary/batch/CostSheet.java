package stillroom.formulary.batch;

import java.math.BigDecimal;
import java.util.Optional;
import stillroom.formulary.quantity.Money;

/**
 * What a batch costs besides its materials, as the maker reckons it.
 *
 * @param packEach container, closure and label; none where the lot of containers says it
 * @param labourMinutes of all who worked on it [min]
 * @param overhead of this batch: rent, power, insurance, tests
 * @param withTax whether all prices are with value-added tax
 * @param marginPercent share of the price that is to remain, 0 up to below 100 [%]
 * @param carriesRejected whether it carries its share of the product's rejected batches
 */
public record CostSheet(
        Optional<Money> packEach,
        int labourMinutes,
        Money labourPerHour,
        Money overhead,
        boolean withTax,
        BigDecimal marginPercent,
        boolean carriesRejected) {
    public static final CostSheet EMPTY =
            new CostSheet(Optional.empty(), 0, Money.ZERO, Money.ZERO, false, BigDecimal.ZERO, true);

    public CostSheet {
        if (labourMinutes < 0 || marginPercent.signum() < 0 || marginPercent.compareTo(BigDecimal.valueOf(100)) >= 0) {
            throw new IllegalArgumentException("minutes " + labourMinutes + " and margin "
                    + marginPercent.toPlainString() + " %, allowed 0 and up, 0 to below 100 %");
        }
    }
}
