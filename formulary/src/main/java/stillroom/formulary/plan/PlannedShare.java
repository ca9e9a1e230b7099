package stillroom.formulary.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import stillroom.formulary.quantity.Percent;
import stillroom.science.weighing.ShareUncertainty;

/**
 * How well the percentage of a line will be known from the weighings.
 *
 * @param percent that the target makes [%]
 * @param deviation standard uncertainty, from the balances of all lines [% of the batch]
 */
public record PlannedShare(String lineId, Percent percent, BigDecimal deviation) {

    /** One per line of the plan, each taken as poured into a filled vessel. Balances not in the list count as exact. */
    public static List<PlannedShare> of(Plan plan, List<Balance> balances) {
        List<PlannedLine> lines = plan.lines();
        List<ShareUncertainty.Weighed> weighed =
                lines.stream().map(line -> weighed(line, balances)).toList();
        return IntStream.range(0, lines.size())
                .mapToObj(i -> new PlannedShare(
                        lines.get(i).lineId(),
                        lines.get(i).planned(plan.batch()),
                        ShareUncertainty.percent(weighed, i)))
                .toList();
    }

    private static ShareUncertainty.Weighed weighed(PlannedLine line, List<Balance> balances) {
        BigDecimal deviation = balances.stream()
                .filter(balance -> balance.name().equals(line.balance()))
                .findFirst()
                .map(balance -> new Weighing(balance, true).deviation().value())
                .orElse(BigDecimal.ZERO);
        return new ShareUncertainty.Weighed(line.target().value(), deviation);
    }
}
