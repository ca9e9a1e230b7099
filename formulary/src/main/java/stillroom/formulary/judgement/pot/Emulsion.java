package stillroom.formulary.judgement.pot;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.Substance;
import stillroom.formulary.quantity.Interval;

/**
 * Oil phase, HLB of the emulsifiers and required HLB of the oils.
 *
 * <p>HLB is a rule of thumb that applies to non-ionic, mostly ethoxylated emulsifiers only; where an ionic surfactant
 * or a non-ionic one without a figure takes part, there is none. Source: Griffin 1949, 1954 (from memory).
 */
public final class Emulsion {
    /** Share of the oil phase without a figure above which the mean of the others says nothing. */
    private static final double MOST_UNKNOWN = 1.0 / 3;

    private static final List<String> OIL_TAGS = List.of("oil", "butter", "wax", "silicone");

    private Emulsion() {}

    /** Substances of the oil phase that do not mix with water, without fatty alcohols and acids. */
    public static List<Share> oils(List<Share> shares) {
        return shares.stream()
                .filter(share -> OIL_TAGS.stream().anyMatch(share::is) && !share.is("emulsifier"))
                .toList();
    }

    static Optional<Figure> hlb(List<Share> shares) {
        return hlbOrWhy(shares).match(Optional::of, because -> Optional.empty());
    }

    static Optional<Figure> requiredHlb(List<Share> shares) {
        return requiredHlbOrWhy(shares).match(Optional::of, because -> Optional.empty());
    }

    /** What stands between oil and water on purpose: emulsifiers and surfactants. */
    public static List<Share> between(List<Share> shares) {
        return shares.stream()
                .filter(share -> share.isIngredient()
                        && (share.is("emulsifier")
                                || share.substance().map(Substance::surfactant).orElse(false)))
                .toList();
    }

    /** Griffin's HLB of one, where it applies. */
    public static Optional<Interval> hlbOf(Share share) {
        return share.hasCharge(ChargeClass.NONIONIC) ? share.substance().flatMap(Substance::hlb) : Optional.empty();
    }

    /** Why a substance has no HLB. */
    public static String whyNoHlb(Substance substance) {
        return switch (substance.charge()) {
            case ANIONIC, CATIONIC -> "it is ionic";
            case AMPHOTERIC -> "it is amphoteric";
            case NONE, NONIONIC ->
                substance.is("polymer") ? "it is a polymer" : "no figure by Griffin's way is recorded";
        };
    }

    /** HLB of the emulsifiers together, or why it does not apply. */
    public static Outcome<Figure> hlbOrWhy(List<Share> shares) {
        List<Share> emulsifiers = between(shares);
        if (emulsifiers.isEmpty()) {
            return Outcome.notKnown("does not apply: there is no emulsifier");
        }
        Optional<Share> stranger =
                emulsifiers.stream().filter(share -> hlbOf(share).isEmpty()).findFirst();
        return stranger.<Outcome<Figure>>map(share -> Outcome.notKnown("does not apply: of " + share.name() + ", "
                        + share.substance().map(Emulsion::whyNoHlb).orElse("nothing is recorded")))
                .orElseGet(() -> mean(
                                "HLB of the emulsifiers",
                                emulsifiers,
                                Substance::hlb,
                                "mass mean of the emulsifiers' HLB")
                        .<Outcome<Figure>>map(Outcome::known)
                        .orElseGet(() -> Outcome.notKnown("does not apply: the emulsifiers are at 0 %")));
    }

    /** Required HLB of the oils, or why it is not known; oils without a figure are named. */
    public static Outcome<Figure> requiredHlbOrWhy(List<Share> shares) {
        List<Share> known = shares.stream()
                .filter(share ->
                        share.substance().flatMap(Substance::requiredHlb).isPresent())
                .toList();
        List<Share> bare = oils(shares).stream()
                .filter(share -> !known.contains(share) && share.nominal() > 0)
                .toList();
        if (known.isEmpty()) {
            return Outcome.notKnown(
                    bare.isEmpty()
                            ? "there is no oil phase"
                            : "no figure is recorded for " + Words.list(Pot.names(bare)));
        }
        double all = Pot.sum(known) + Pot.sum(bare);
        if (Pot.sum(bare) > MOST_UNKNOWN * all) {
            return Outcome.notKnown("no figure is recorded for " + Words.list(Pot.names(bare)) + ", "
                    + Words.percent(Pot.sum(bare) / all) + " of the oil phase");
        }
        String without =
                bare.isEmpty() ? "" : "; without " + Words.list(Pot.names(bare)) + ", of which none is recorded";
        return mean(
                        "Required HLB of the oils",
                        known,
                        Substance::requiredHlb,
                        "mass mean of the oils' required HLB for oil in water; a rule of thumb" + without)
                .<Outcome<Figure>>map(Outcome::known)
                .orElseGet(() -> Outcome.notKnown("the oils are at 0 %"));
    }

    /**
     * Mass fraction of the first emulsifier of a pair whose blend has the HLB asked for; empty where that lies outside
     * the pair, as nothing is extrapolated.
     */
    public static Optional<Double> firstOfPair(double askedHlb, double firstHlb, double secondHlb) {
        double low = Math.min(firstHlb, secondHlb);
        double high = Math.max(firstHlb, secondHlb);
        return askedHlb < low || askedHlb > high || low == high
                ? Optional.empty()
                : Optional.of((askedHlb - secondHlb) / (firstHlb - secondHlb));
    }

    /** The mass mean of HLB figures, by mass [any unit, all the same]. */
    public static double blend(List<Double> masses, List<Double> hlbs) {
        double mass = 0;
        double sum = 0;
        for (int i = 0; i < masses.size(); i++) {
            mass += masses.get(i);
            sum += masses.get(i) * hlbs.get(i);
        }
        return sum / mass;
    }

    private static Optional<Figure> mean(
            String name, List<Share> shares, Function<Substance, Optional<Interval>> reading, String method) {
        double mass = Pot.sum(shares);
        double low = 0;
        double high = 0;
        for (Share share : shares) {
            Interval hlb = share.substance().flatMap(reading).orElseThrow();
            low += share.nominal() * hlb.low();
            high += share.nominal() * hlb.high();
        }
        return mass == 0
                ? Optional.empty()
                : Optional.of(new Figure(
                        name,
                        low / mass,
                        (low + high) / 2 / mass,
                        high / mass,
                        "HLB",
                        method,
                        List.of("Griffin 1949, 1954, from memory")));
    }
}
