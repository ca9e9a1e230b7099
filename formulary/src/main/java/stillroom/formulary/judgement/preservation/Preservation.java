package stillroom.formulary.judgement.preservation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.constants.AcidConstant;
import stillroom.formulary.evaluation.PreservativeState;
import stillroom.formulary.judgement.pot.Emulsion;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Parent;
import stillroom.formulary.material.Substance;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.rule.InhibitionFigures;

/**
 * Each preservative at a pH: total, undissociated, free in the water phase after partition into the oil phase.
 *
 * <p>Free = f · total / (W + f · P · O) with f the undissociated fraction, P the octanol-water partition coefficient,
 * W and O the mass fractions of water phase and oil phase. What micelles of surfactants hold is not taken off, as no
 * figures are recorded; the true free share is then lower.
 */
public final class Preservation {
    private static final String MICELLES = "what surfactant micelles hold is not taken off";

    private Preservation() {}

    /** The states over a range of pH; empty where there is no water phase. */
    public static List<PreservativeState> states(Pot pot, Interval ph) {
        double water = Pot.sum(pot.where(share -> share.isWater() || share.is("humectant") || share.is("alcohol")));
        if (pot.waterFraction() < 0.03) {
            return List.of();
        }
        double oil = Pot.sum(Emulsion.oils(pot.shares()));
        List<PreservativeState> states = new ArrayList<>();
        byBase(pot).forEach((base, shares) -> states.add(new Phases(pot, water, oil, ph).state(base, shares)));
        return List.copyOf(states);
    }

    /** Preservatives by the acid or neutral substance that acts. */
    private static Map<String, List<Share>> byBase(Pot pot) {
        Map<String, List<Share>> byBase = new LinkedHashMap<>();
        for (Share share : pot.ingredients("preservative-annex-v")) {
            boolean surfactant = share.substance().map(Substance::surfactant).orElse(false);
            if (!surfactant || pot.broughtBy(Family.PRESERVATIVE, share)) {
                byBase.computeIfAbsent(base(share), key -> new ArrayList<>()).add(share);
            }
        }
        return byBase;
    }

    private static String base(Share share) {
        return share.substance()
                .flatMap(Substance::parent)
                .filter(parent -> parent.counterIon().isPresent())
                .map(Parent::substance)
                .orElse(share.key());
    }

    /** The two phases at a range of pH. */
    private record Phases(Pot pot, double water, double oil, Interval ph) {
        PreservativeState state(String base, List<Share> shares) {
            Optional<AcidConstant> acid = shares.stream()
                    .flatMap(share -> share.substance().flatMap(Substance::acidKey).stream())
                    .flatMap(key -> pot.rules().acids().find(key).stream())
                    .findFirst();
            double total = shares.stream()
                    .mapToDouble(share -> share.nominal() * asBase(share, base))
                    .sum();
            Interval fraction = acid.map(this::fractions).orElse(Interval.point(1));
            Optional<InhibitionFigures> figures =
                    Optional.ofNullable(pot.rules().inhibition().get(base));
            Interval free = new Interval(
                    100 * free(total, fraction.low(), figures), 100 * free(total, fraction.high(), figures));
            String name = pot.book()
                    .substance(base)
                    .map(Substance::inciName)
                    .orElse(shares.get(0).name());
            return new PreservativeState(
                    base,
                    name,
                    Pot.lines(shares),
                    total * 100,
                    new Interval(fraction.low() * 100, fraction.high() * 100),
                    free,
                    solubility(acid),
                    figures.map(known -> against(known, free.low())).orElse(List.of()),
                    MICELLES);
        }

        private Interval fractions(AcidConstant acid) {
            double one = Undissociated.fraction(acid, ph.low());
            double other = Undissociated.fraction(acid, ph.high());
            return new Interval(Math.min(one, other), Math.max(one, other));
        }

        private double free(double total, double fraction, Optional<InhibitionFigures> figures) {
            double partition = figures.flatMap(InhibitionFigures::logP)
                    .map(logP -> Math.pow(10, logP))
                    .orElse(0.0);
            return fraction * total / (water + fraction * partition * oil);
        }

        private double asBase(Share share, String base) {
            Optional<Double> own = share.substance().flatMap(Substance::molarMassGramsPerMol);
            Optional<Double> counted = pot.book()
                    .substance(base)
                    .flatMap(Substance::molarMassGramsPerMol)
                    .or(() -> pot.rules().acids().find(base).map(AcidConstant::gramsPerMol));
            double units = share.substance()
                    .flatMap(Substance::parent)
                    .map(Parent::units)
                    .orElse(1.0);
            return share.key().equals(base) || own.isEmpty() || counted.isEmpty()
                    ? 1
                    : units * counted.get() / own.get();
        }

        private static Optional<Double> solubility(Optional<AcidConstant> acid) {
            return acid.filter(known -> known.freeAcidSolubilityGramsPerKg().isPresent())
                    .map(known -> known.freeAcidSolubilityGramsPerKg().orElseThrow() / 10);
        }

        private static List<PreservativeState.Inhibition> against(InhibitionFigures figures, double freePercent) {
            List<PreservativeState.Inhibition> against = new ArrayList<>();
            PreservativeState.Group[] groups = PreservativeState.Group.values();
            for (int i = 0; i < groups.length; i++) {
                Optional<Interval> published = figures.groups().get(i);
                if (published.isPresent()) {
                    against.add(new PreservativeState.Inhibition(
                            groups[i], published.get(), standing(published.get(), freePercent), figures.source()));
                }
            }
            return against;
        }

        private static PreservativeState.Standing standing(Interval published, double freePercent) {
            if (freePercent < published.low()) {
                return PreservativeState.Standing.BELOW_ALL;
            }
            return freePercent > published.high()
                    ? PreservativeState.Standing.ABOVE_ALL
                    : PreservativeState.Standing.AMONG;
        }
    }
}
