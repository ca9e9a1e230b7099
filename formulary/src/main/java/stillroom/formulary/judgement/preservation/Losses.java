package stillroom.formulary.judgement.preservation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.judgement.pot.Emulsion;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.judgement.pot.Words;
import stillroom.formulary.material.Substance;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.rule.DistributionFigures.OilKind;
import stillroom.formulary.rule.DistributionFigures.Published;
import stillroom.formulary.rule.InhibitionFigures;
import stillroom.science.distribution.Distribution;

/**
 * Where one preservative goes besides the water: the least and the most that oils and micelles can hold.
 *
 * <p>For a kind of oil without a figure the loss lies between none and that of octanol, which dissolves more than any oil
 * tabled. A surfactant without a figure is not known.
 *
 * @param least, most what the oils and the micelles with a figure hold
 * @param oilGap, micelleGap why a part of the loss is not known; empty where all of it is
 */
record Losses(Distribution least, Distribution most, Optional<String> oilGap, Optional<String> micelleGap) {
    private static final double SOME_SURFACTANT = 0.001;
    /** Below this HLB an emulsifier dissolves in the oil and forms no micelles in the water; common practice, no source. */
    private static final double LIPOPHILIC_HLB = 10;

    static Losses of(Pot pot, String preservative, double water) {
        List<Distribution.Oil> leastOils = new ArrayList<>();
        List<Distribution.Oil> mostOils = new ArrayList<>();
        boolean oilUnknown = false;
        for (Share oil : Emulsion.oils(pot.shares())) {
            Optional<Interval> ratio = ratio(pot, preservative, oil);
            oilUnknown |= ratio.isEmpty() && oil.amount().upper() > 0;
            ratio.ifPresent(known -> {
                leastOils.add(new Distribution.Oil(oil.amount().lower(), known.low()));
                mostOils.add(new Distribution.Oil(oil.amount().upper(), known.high()));
            });
        }
        List<Distribution.Micelles> leastMicelles = new ArrayList<>();
        List<Distribution.Micelles> mostMicelles = new ArrayList<>();
        List<String> strangers = new ArrayList<>();
        for (Share surfactant : pot.where(Losses::formsMicelles)) {
            Optional<Published> figure = pot.rules().distribution().inMicelles(preservative, surfactant.key());
            if (figure.isEmpty()) {
                strangers.add(surfactant.name());
            }
            figure.map(Published::figure).ifPresent(k -> {
                leastMicelles.add(new Distribution.Micelles(surfactant.amount().lower(), k.low()));
                mostMicelles.add(new Distribution.Micelles(surfactant.amount().upper(), k.high()));
            });
        }
        return new Losses(
                new Distribution(water, leastOils, leastMicelles),
                new Distribution(water, mostOils, mostMicelles),
                oilUnknown ? Optional.of("no partition figure is recorded") : Optional.empty(),
                strangers.isEmpty()
                        ? Optional.empty()
                        : Optional.of("no published figure is recorded for micelles of " + Words.list(strangers)));
    }

    private static Optional<Interval> ratio(Pot pot, String preservative, Share oil) {
        for (OilKind kind : OilKind.values()) {
            if (oil.is(kind.tag())) {
                Optional<Interval> measured =
                        pot.rules().distribution().inOil(preservative, kind).map(Published::figure);
                if (measured.isPresent()) {
                    return measured;
                }
            }
        }
        return Optional.ofNullable(pot.rules().inhibition().get(preservative))
                .flatMap(InhibitionFigures::logP)
                .map(logP -> new Interval(0, Math.pow(10, logP)));
    }

    private static boolean formsMicelles(Share share) {
        boolean surfactant = share.substance().map(Substance::surfactant).orElse(false);
        boolean lipophilic = share.substance()
                .flatMap(Substance::hlb)
                .map(hlb -> hlb.high() < LIPOPHILIC_HLB)
                .orElse(false);
        return surfactant && !lipophilic && share.nominal() >= SOME_SURFACTANT;
    }

    /** Free in the water at the two ends; the lower one is 0 where a loss is not known [mass fraction]. */
    Interval free(Interval total, Interval uncharged) {
        double high = least.free(total.high(), uncharged.high());
        return new Interval(isKnown() ? most.free(total.low(), uncharged.low()) : 0, high);
    }

    boolean isKnown() {
        return oilGap.isEmpty() && micelleGap.isEmpty();
    }

    /** Share in oil, lowest when the micelles take most [0 to 1]. */
    Interval inOil(Interval uncharged) {
        return ordered(
                new Distribution(most.water(), least.oils(), most.micelles()).inOil(uncharged.low()),
                new Distribution(most.water(), most.oils(), least.micelles()).inOil(uncharged.high()));
    }

    /** Share in micelles, lowest when the oils take most [0 to 1]. */
    Interval inMicelles(Interval uncharged) {
        return ordered(
                new Distribution(most.water(), most.oils(), least.micelles()).inMicelles(uncharged.low()),
                new Distribution(most.water(), least.oils(), most.micelles()).inMicelles(uncharged.high()));
    }

    private static Interval ordered(double one, double other) {
        return new Interval(Math.min(one, other), Math.max(one, other));
    }
}
