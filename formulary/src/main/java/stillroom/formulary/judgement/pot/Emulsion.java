package stillroom.formulary.judgement.pot;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stillroom.formulary.evaluation.Figure;
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
    private static final List<String> OIL_TAGS = List.of("oil", "butter", "wax", "silicone");

    private Emulsion() {}

    /** Substances of the oil phase that do not mix with water, without fatty alcohols and acids. */
    public static List<Share> oils(List<Share> shares) {
        return shares.stream()
                .filter(share -> OIL_TAGS.stream().anyMatch(share::is) && !share.is("emulsifier"))
                .toList();
    }

    static Optional<Figure> hlb(List<Share> shares) {
        List<Share> emulsifiers = shares.stream()
                .filter(share -> share.isIngredient()
                        && (share.is("emulsifier")
                                || share.substance().map(Substance::surfactant).orElse(false)))
                .toList();
        boolean applies = !emulsifiers.isEmpty()
                && emulsifiers.stream()
                        .allMatch(share -> share.hasCharge(ChargeClass.NONIONIC)
                                && share.substance().flatMap(Substance::hlb).isPresent());
        return applies
                ? mean("HLB of the emulsifiers", emulsifiers, Substance::hlb, "mass mean of the emulsifiers' HLB")
                : Optional.empty();
    }

    static Optional<Figure> requiredHlb(List<Share> shares) {
        List<Share> oils = shares.stream()
                .filter(share ->
                        share.substance().flatMap(Substance::requiredHlb).isPresent())
                .toList();
        return oils.isEmpty()
                ? Optional.empty()
                : mean(
                        "Required HLB of the oils",
                        oils,
                        Substance::requiredHlb,
                        "mass mean of the oils' required HLB for oil in water; a rule of thumb");
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
