package stillroom.formulary.label;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import stillroom.formulary.judgement.law.Applying;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.rule.Rule;

/**
 * The perfume allergens to be named: above 0.001 % in what stays on, above 0.01 % in what is rinsed off, summed over
 * all materials and decided at the upper end of a range. Exactly the threshold is not above it.
 *
 * <p>Source: Regulation (EC) No 1223/2009, Annex III, entries of the allergens (read).
 */
final class Allergens {
    private static final double LEAVE_ON = 0.00001;
    private static final double RINSE_OFF = 0.0001;

    private Allergens() {}

    /**
     * One allergen above its threshold.
     *
     * @param certain whether the nominal share alone is above it
     */
    record Declared(String name, List<String> substances, MassFraction share, boolean certain) {}

    static double threshold(Pot pot) {
        return pot.brief().type().leaveOn() ? LEAVE_ON : RINSE_OFF;
    }

    static List<Declared> of(Pot pot, LocalDate day) {
        double limit = threshold(pot) * (1 + 1e-9);
        List<Declared> declared = new ArrayList<>();
        for (Applying applying : Applying.on(pot, day)) {
            if (applying.rule().kind() == Rule.Kind.ALLERGEN) {
                MassFraction sum = sum(applying.shares());
                if (sum.upper() > limit) {
                    declared.add(new Declared(
                            applying.rule().name(),
                            applying.shares().stream().map(Share::key).toList(),
                            sum,
                            sum.nominal() > limit));
                }
            }
        }
        return declared;
    }

    private static MassFraction sum(List<Share> shares) {
        double lower = 0;
        double nominal = 0;
        double upper = 0;
        for (Share share : shares) {
            lower += share.amount().lower();
            nominal += share.amount().nominal();
            upper += share.amount().upper();
        }
        return new MassFraction(Math.min(1, lower), Math.min(1, nominal), Math.min(1, upper));
    }
}
