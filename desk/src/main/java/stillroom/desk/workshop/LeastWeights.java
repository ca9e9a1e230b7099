package stillroom.desk.workshop;

import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import stillroom.desk.shell.Format;
import stillroom.desk.workshop.BalancePage.Least;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.BalanceCheck;
import stillroom.formulary.plan.Weighing;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;

/** The least that a balance weighs, by tolerance, and what its last check showed. */
final class LeastWeights {
    private static final MathContext SHOWN = new MathContext(3);

    private LeastWeights() {}

    static List<Least> of(Balance balance) {
        Weighing empty = new Weighing(balance, false);
        Weighing filled = new Weighing(balance, true);
        List<Least> least = new ArrayList<>();
        for (String tolerance : new String[] {"1", "2", "5", "10"}) {
            Percent percent = Percent.of(tolerance);
            least.add(
                    new Least("± " + tolerance + " %", shown(empty.minimum(percent)), shown(filled.minimum(percent))));
        }
        least.add(new Least(
                "0.10 %, the pharmacopoeial figure, for information",
                shown(empty.pharmacopoeialMinimum()), shown(filled.pharmacopoeialMinimum())));
        return least;
    }

    private static String shown(Grams mass) {
        return Format.grams(new Grams(mass.value().round(SHOWN)));
    }

    static String check(Balance balance, BalanceCheck check) {
        String off = check.off().isZero() ? "as it should" : Format.grams(check.off()) + " g off";
        return Format.day(check.on()) + ", " + check.by() + ": with " + Format.grams(check.reference())
                + " g it showed " + Format.grams(check.shown()) + " g, " + off + ". "
                + (check.good(balance)
                        ? "Within twice its repeatability."
                        : "More than twice its repeatability: level it, let it warm up, adjust it, and check again.");
    }
}
