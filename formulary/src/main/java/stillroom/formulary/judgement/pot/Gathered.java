package stillroom.formulary.judgement.pot;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.constants.EffectiveConstant;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Substance;
import stillroom.formulary.quantity.Interval;
import stillroom.science.equilibrium.AcidBase;
import stillroom.science.equilibrium.Solution;

/**
 * A weak acid or base of the composition that gathers, ready for a solver.
 *
 * @param molPerKg moles, or groups of a polymer, in one kilogram of it; a range for a polymer
 * @param ownPh of the material that brings it, which tells how far it is neutralised as sold
 */
record Gathered(Share share, EffectiveConstant constant, Interval molPerKg, Optional<Interval> ownPh) {
    private static final double MIDDLE = 0.5;

    static List<Gathered> of(List<Item> items, List<Share> shares, Map<String, EffectiveConstant> constants) {
        List<Gathered> gathered = new ArrayList<>();
        for (Share share : shares) {
            EffectiveConstant constant = constants.get(share.key());
            if (constant != null && share.amount().upper() > 0) {
                molPerKg(share, constant)
                        .ifPresent(mol -> gathered.add(new Gathered(share, constant, mol, ownPh(items, share))));
            }
        }
        return gathered;
    }

    private static Optional<Interval> molPerKg(Share share, EffectiveConstant constant) {
        return constant.groupsMolPerKg()
                .or(() -> share.substance()
                        .flatMap(Substance::molarMassGramsPerMol)
                        .map(mass -> Interval.point(1000 / mass)));
    }

    private static Optional<Interval> ownPh(List<Item> items, Share share) {
        return items.stream()
                .filter(item -> share.lines().contains(item.portion().lineId()))
                .flatMap(item -> item.material().flatMap(Material::ownPh).stream())
                .findFirst();
    }

    /** At the middle of its ranges. */
    Solution middle(Solution solution, double water) {
        return in(solution, water, share.nominal(), molPerKg.middle(), MIDDLE);
    }

    /** With its constants at one end of their range, 0 or 1. */
    Solution atConstants(Solution solution, double water, double position) {
        return in(solution, water, share.nominal(), molPerKg.middle(), position);
    }

    Solution atLeast(Solution solution, double water) {
        return in(solution, water, share.amount().lower(), molPerKg.low(), MIDDLE);
    }

    Solution atMost(Solution solution, double water) {
        return in(solution, water, share.amount().upper(), molPerKg.high(), MIDDLE);
    }

    boolean isRanged() {
        return !share.amount().isExact() || !molPerKg.isPoint();
    }

    private Solution in(Solution solution, double water, double amount, double molPerKgOfIt, double position) {
        double mol = amount * molPerKgOfIt / water;
        List<AcidBase> systems = constant.systems(position);
        Solution grown = solution;
        for (AcidBase system : systems) {
            grown = grown.with(system, mol / systems.size());
        }
        double cations = cations(position);
        return cations == 0
                ? grown
                : grown.withIon(constant.substance() + "'s counter-ion", cations > 0 ? 1 : -1, mol * Math.abs(cations));
    }

    /** What is sold as a salt holds as many cations as balance it at its own pH. */
    private double cations(double position) {
        return constant.cations() == 0
                ? 0
                : ownPh.map(own -> -constant.meanCharge(own.middle(), position)).orElse(constant.cations());
    }
}
