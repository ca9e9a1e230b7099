package stillroom.formulary.judgement.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.evaluation.Surface;
import stillroom.formulary.judgement.pot.Emulsion;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.material.Substance;
import stillroom.formulary.quantity.Interval;

/** Puts together what is known about surfactants, phases, HLB and charge. */
public final class SurfaceWork {
    private SurfaceWork() {}

    public static Surface of(Pot pot) {
        Optional<Interval> ph = pot.workingPh();
        List<Surface.Charge> charges = new NetCharge(pot, ph).lines();
        List<Share> between = Emulsion.between(pot.shares());
        return new Surface(
                pot.figures().activeMatterPercent(),
                ratio(pot),
                mildness(),
                phases(pot, between),
                Emulsion.hlbOrWhy(pot.shares()),
                Emulsion.requiredHlbOrWhy(pot.shares()),
                between.stream().map(SurfaceWork::emulsifier).toList(),
                100
                        * Pot.sum(between.stream()
                                .filter(share -> Emulsion.hlbOf(share).isPresent())
                                .toList()),
                charges,
                NetCharge.sum(charges),
                ph);
    }

    /**
     * Net charge of ionic surfactants and polymers; 0 where there is none [mmol/kg].
     *
     * @param ph at which weak groups are counted; without one they range over all states
     */
    public static Outcome<Interval> charge(Pot pot, Optional<Interval> ph) {
        List<Surface.Charge> charges = new NetCharge(pot, ph).lines();
        return charges.isEmpty() ? Outcome.known(Interval.point(0)) : NetCharge.sum(charges);
    }

    /** A soap is in it that turns into fatty acid at this pH. */
    public static boolean losesSoap(Pot pot, Interval ph) {
        return new NetCharge(pot, Optional.of(ph)).losesSoap();
    }

    private static Outcome<Figure> ratio(Pot pot) {
        return pot.figures().others().stream()
                .filter(figure -> figure.name().equals("Anionic to amphoteric"))
                .findFirst()
                .<Outcome<Figure>>map(Outcome::known)
                .orElseGet(() ->
                        Outcome.notKnown("does not apply: anionic and amphoteric surfactants are not both in it"));
    }

    /** No recorded source allows a figure of mildness to be reckoned from a composition. */
    private static Outcome<Figure> mildness() {
        return Outcome.notKnown("no recorded source supports reckoning mildness from a composition; a patch test or the"
                + " assessor tells. What is looked at: active matter in all, its ratio, and the pH");
    }

    private static List<Figure> phases(Pot pot, List<Share> between) {
        List<Share> oil = new ArrayList<>(Emulsion.oils(pot.shares()));
        pot.shares().stream()
                .filter(share -> (share.is("fatty-alcohol") || share.is("fatty-acid"))
                        && !oil.contains(share)
                        && !between.contains(share))
                .forEach(oil::add);
        List<Share> water = pot.where(share -> !between.contains(share)
                && !oil.contains(share)
                && (share.isWater() || share.is("humectant") || share.is("alcohol") || share.is("electrolyte")));
        List<Share> rest =
                pot.where(share -> !between.contains(share) && !oil.contains(share) && !water.contains(share));
        return List.of(
                sum("Oil phase", oil, "oils, butters, waxes, silicones, fatty alcohols and acids"),
                sum("Water phase", water, "water, humectants, alcohols and salts"),
                sum("Surfactants and emulsifiers", between, "as 100 %"),
                sum("The rest", rest, "polymers, powders, perfume, actives and others"));
    }

    private static Figure sum(String name, List<Share> shares, String method) {
        double low = 0;
        double high = 0;
        for (Share share : shares) {
            low += share.amount().lower();
            high += share.amount().upper();
        }
        return new Figure(
                name,
                100 * Math.min(1, low),
                100 * Math.min(1, Pot.sum(shares)),
                100 * Math.min(1, high),
                "%",
                method,
                List.of());
    }

    private static Surface.Emulsifier emulsifier(Share share) {
        Optional<Interval> hlb = Emulsion.hlbOf(share);
        return new Surface.Emulsifier(
                share.key(),
                share.name(),
                share.nominal() * 100,
                hlb.<Outcome<Interval>>map(Outcome::known)
                        .orElseGet(() -> Outcome.notKnown("does not apply: "
                                + share.substance().map(SurfaceWork::why).orElse("nothing is recorded about it"))));
    }

    private static String why(Substance substance) {
        return Emulsion.whyNoHlb(substance);
    }
}
