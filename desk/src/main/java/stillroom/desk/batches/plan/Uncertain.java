package stillroom.desk.batches.plan;

import java.util.List;
import stillroom.desk.shell.Format;
import stillroom.formulary.material.Material;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.plan.PlannedShare;
import stillroom.formulary.plan.PremixUse;
import stillroom.formulary.quantity.PercentRange;

/** How well the percentage of a limited line will be known, from all weighings and from its premix. */
final class Uncertain {
    private Uncertain() {}

    static String of(
            Plan plan,
            PlannedLine line,
            List<Balance> balances,
            WeighedAs as,
            PlanDesk desk,
            PercentRange allowed,
            int decimals) {
        PlannedShare share = PlannedShare.of(plan, balances).stream()
                .filter(one -> one.lineId().equals(line.lineId()))
                .findFirst()
                .orElseThrow();
        double percent = share.percent().value().doubleValue();
        double premix = as.premixes().stream()
                .filter(use -> use.lineId().equals(line.lineId()))
                .mapToDouble(use -> relative(use, as, desk))
                .sum();
        double twice = 2 * Math.hypot(share.deviation().doubleValue(), percent * premix);
        double high = allowed.high().value().doubleValue();
        double low = allowed.low().value().doubleValue();
        String said = Format.figure(percent, decimals + 1) + " ± " + Format.figure(twice, decimals + 1)
                + " % from the weighings; ";
        if (percent + twice > high || (low > 0 && percent - twice < low)) {
            return said + "that could miss what is allowed, " + Format.figure(low, decimals) + " to "
                    + Format.figure(high, decimals) + " %";
        }
        return said + "allowed " + Format.figure(low, decimals) + " to " + Format.figure(high, decimals) + " %";
    }

    private static double relative(PremixUse use, WeighedAs as, PlanDesk desk) {
        return desk.desk().ledger().lots().ofMaterial(use.premixKey()).stream()
                .flatMap(stocked -> stocked.lot().certificate().stream())
                .flatMap(certificate -> certificate.strength().stream())
                .mapToDouble(strength -> WeighedAs.relative(strength.percent()))
                .max()
                .orElseGet(() -> as.book()
                        .material(use.premixKey())
                        .flatMap(Material::strength)
                        .map(strength -> WeighedAs.relative(strength.percent()))
                        .orElse(0.0));
    }
}
