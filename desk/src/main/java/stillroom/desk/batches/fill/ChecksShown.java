package stillroom.desk.batches.fill;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import stillroom.desk.batches.fill.FillPage.Check;
import stillroom.desk.batches.fill.FillPage.Container;
import stillroom.desk.shell.Format;
import stillroom.formulary.batch.FillCheck;
import stillroom.formulary.concern.Concern;
import stillroom.formulary.concern.Entry;
import stillroom.formulary.quantity.Grams;

/** Fill checks as the page shows them. */
final class ChecksShown {
    private ChecksShown() {}

    static Check of(Entry<Concern.FillChecked> entry) {
        Concern.FillChecked checked = entry.concern();
        FillCheck check = FillCheck.of(checked.nominal(), checked.net(), checked.tareDeviation());
        List<Container> containers = new ArrayList<>();
        for (Grams net : checked.net()) {
            containers.add(container(containers.size() + 1, net, checked.nominal(), check.tolerableError()));
        }
        return new Check(
                "Entry " + entry.number() + ": " + check.weighed() + " weighed, mean "
                        + Format.figure(check.mean(), 2) + " g of " + Format.grams(checked.nominal())
                        + " g declared, s " + Format.figure(check.deviation(), 2) + " g; the mean has to reach "
                        + Format.figure(check.leastMean(), 2) + " g, tolerable negative error "
                        + Format.decimal(check.tolerableError(), 2) + " g.",
                check.passes(),
                check.says(),
                containers);
    }

    private static Container container(int number, Grams net, Grams nominal, BigDecimal error) {
        BigDecimal off = net.value().subtract(nominal.value());
        boolean twice = off.compareTo(error.negate().multiply(BigDecimal.valueOf(2))) < 0;
        boolean once = off.compareTo(error.negate()) < 0;
        String verdict = twice
                ? "short by more than twice the tolerable error: not to be sold"
                : once ? "short by more than the tolerable error" : off.signum() < 0 ? "short, tolerable" : "full";
        return new Container(number, Format.reckonedGrams(net), Format.decimal(off, 2), verdict, once);
    }
}
