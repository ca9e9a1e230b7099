package stillroom.formulary.judgement.preservation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.constants.AcidConstant;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.evaluation.PreservativeState;
import stillroom.formulary.judgement.pot.Expressed;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Parent;
import stillroom.formulary.material.Substance;
import stillroom.formulary.quantity.Interval;

/**
 * Each preservative at a pH: total, undissociated, lost to oil and micelles, free in the water phase.
 *
 * <p>Only the undissociated form enters oil and micelles (micelles do not bind the anions of parabens and hydroxybenzoic
 * acids: Journal of Molecular Liquids 2009, abstract read). The equations stand in {@code Distribution}; the figures in
 * the tables beside {@code inhibition.csv}.
 */
public final class Preservation {
    private static final double WATER_PHASE = 0.03;

    private Preservation() {}

    /** The states over a range of pH; empty where there is no water phase. */
    public static List<PreservativeState> states(Pot pot, Interval ph) {
        if (pot.waterFraction() < WATER_PHASE) {
            return List.of();
        }
        double water = Pot.sum(pot.where(share -> share.isWater() || share.is("humectant") || share.is("alcohol")));
        List<PreservativeState> states = new ArrayList<>();
        byBase(pot).forEach((base, shares) -> states.add(new One(pot, base, shares, water).state(ph)));
        return List.copyOf(states);
    }

    /** Whether anything in it acts by its undissociated form, so that the pH decides. */
    static boolean hangsOnPh(Pot pot) {
        return byBase(pot).values().stream()
                .flatMap(List::stream)
                .anyMatch(share -> share.substance().flatMap(Substance::acidKey).isPresent());
    }

    /** Preservatives by the acid or neutral substance that acts. */
    private static Map<String, List<Share>> byBase(Pot pot) {
        Map<String, List<Share>> byBase = new LinkedHashMap<>();
        for (Share share : pot.ingredients("preservative-annex-v")) {
            boolean surfactant = share.substance().map(Substance::surfactant).orElse(false);
            if (!surfactant || pot.broughtBy(Family.PRESERVATIVE, share)) {
                byBase.computeIfAbsent(base(share, pot), key -> new ArrayList<>())
                        .add(share);
            }
        }
        return byBase;
    }

    /** A salt counts as its acid or base, but the salt of a paraben as that paraben, as which it acts. */
    private static String base(Share share, Pot pot) {
        Optional<String> paraben = share.substance()
                .filter(known -> known.is("paraben"))
                .flatMap(Substance::acidKey)
                .filter(key -> pot.book().substance(key).isPresent());
        return paraben.or(() -> share.substance()
                        .flatMap(Substance::parent)
                        .filter(parent -> parent.counterIon().isPresent())
                        .map(Parent::substance))
                .orElse(share.key());
    }

    /** One preservative with all that brings it. */
    private record One(Pot pot, String base, List<Share> shares, double water) {
        PreservativeState state(Interval ph) {
            Optional<AcidConstant> acid = acid();
            boolean dissociates = acid.isEmpty() && isAcid();
            Interval uncharged = acid.map(known -> fractions(known, ph))
                    .orElse(dissociates ? new Interval(0, 1) : Interval.point(1));
            List<String> uncounted = new ArrayList<>();
            double[] total = total(uncounted);
            Interval range = new Interval(total[0], total[2]);
            Losses losses = Losses.of(pot, base, water);
            Interval free = losses.free(range, uncharged);
            boolean atMost = !losses.isKnown() || dissociates;
            Interval shown = percent(atMost ? new Interval(0, free.high()) : free);
            return new PreservativeState(
                    base,
                    name(),
                    Pot.lines(shares),
                    total[1] * 100,
                    percent(range),
                    percent(uncharged),
                    outcome(losses.oilGap(), losses.inOil(uncharged)),
                    outcome(losses.micelleGap(), losses.inMicelles(uncharged)),
                    shown,
                    atMost,
                    acid.filter(known -> known.freeAcidSolubilityGramsPerKg().isPresent())
                            .map(known -> known.freeAcidSolubilityGramsPerKg().orElseThrow() / 10),
                    Standings.of(pot.rules().inhibition().get(base), shown, atMost),
                    note(losses, dissociates, uncounted));
        }

        private Optional<AcidConstant> acid() {
            return shares.stream()
                    .flatMap(share -> share.substance().flatMap(Substance::acidKey).stream())
                    .flatMap(key -> pot.rules().acids().find(key).stream())
                    .findFirst();
        }

        /** An acid by its name, or what a salt counts as: it dissociates, whether or not a constant is on record. */
        private boolean isAcid() {
            return base.endsWith("-acid")
                    || shares.stream()
                            .anyMatch(share -> share.substance()
                                    .flatMap(Substance::parent)
                                    .flatMap(Parent::counterIon)
                                    .isPresent());
        }

        private static Interval fractions(AcidConstant acid, Interval ph) {
            double one = Undissociated.fraction(acid, ph.low());
            double other = Undissociated.fraction(acid, ph.high());
            return new Interval(Math.min(one, other), Math.max(one, other));
        }

        /** Lower, nominal and upper mass fraction, salts counted as what acts. */
        private double[] total(List<String> uncounted) {
            double[] total = new double[3];
            for (Share share : shares) {
                Optional<Double> known =
                        share.substance().flatMap(substance -> Expressed.as(substance, base, pot.book()));
                double factor = known.orElseGet(() -> throughConstants(share).orElse(1.0));
                if (known.isEmpty() && throughConstants(share).isEmpty()) {
                    uncounted.add(share.name());
                }
                total[0] += share.amount().lower() * factor;
                total[1] += share.nominal() * factor;
                total[2] += share.amount().upper() * factor;
            }
            return total;
        }

        /** Where the acid itself is no substance of the book, the table of constants has its molar mass. */
        private Optional<Double> throughConstants(Share share) {
            Optional<Double> own = share.substance().flatMap(Substance::molarMassGramsPerMol);
            Optional<Double> counted = pot.rules().acids().find(base).map(AcidConstant::gramsPerMol);
            double units = share.substance()
                    .flatMap(Substance::parent)
                    .map(Parent::units)
                    .orElse(1.0);
            return own.isPresent() && counted.isPresent()
                    ? Optional.of(units * counted.get() / own.get())
                    : Optional.empty();
        }

        private String name() {
            return pot.book()
                    .substance(base)
                    .map(Substance::inciName)
                    .orElse(shares.get(0).name());
        }

        private static String note(Losses losses, boolean dissociates, List<String> uncounted) {
            List<String> parts = new ArrayList<>();
            losses.oilGap().ifPresent(gap -> parts.add("loss into oil not known: " + gap));
            losses.micelleGap().ifPresent(gap -> parts.add("loss into micelles not known: " + gap));
            if (dissociates) {
                parts.add("its dissociation constant is not recorded");
            }
            if (!uncounted.isEmpty()) {
                parts.add(String.join(", ", uncounted) + " counted in full: a molar mass is missing");
            }
            return parts.isEmpty()
                    ? "loss into oil and micelles taken off by published figures"
                    : String.join("; ", parts);
        }

        private static Outcome<Interval> outcome(Optional<String> gap, Interval share) {
            return gap.<Outcome<Interval>>map(Outcome::notKnown).orElseGet(() -> Outcome.known(percent(share)));
        }

        private static Interval percent(Interval fraction) {
            return new Interval(fraction.low() * 100, fraction.high() * 100);
        }
    }
}
