package stillroom.formulary.rule;

import java.util.Map;
import java.util.Optional;
import stillroom.formulary.quantity.Interval;

/**
 * Published figures on where a preservative goes besides the water, uncharged form. A pair without a figure is not known.
 *
 * @param oils ratio of concentrations oil to water, by preservative and kind of oil [-]
 * @param micelles k of R = 1 + k·s by preservative and surfactant [1/%]
 */
public record DistributionFigures(
        Map<String, Map<OilKind, Published>> oils, Map<String, Map<String, Published>> micelles) {
    public DistributionFigures {
        oils = Map.copyOf(oils);
        micelles = Map.copyOf(micelles);
    }

    /** Kinds of oil that published ratios tell apart; also the tag that a substance of the kind carries. */
    public enum OilKind {
        TRIGLYCERIDE("triglyceride"),
        HYDROCARBON("hydrocarbon");

        private final String tag;

        OilKind(String tag) {
            this.tag = tag;
        }

        public String tag() {
            return tag;
        }
    }

    /** A figure with its scatter and source. */
    public record Published(Interval figure, String source) {}

    public Optional<Published> inOil(String preservative, OilKind kind) {
        return Optional.ofNullable(oils.get(preservative)).map(known -> known.get(kind));
    }

    public Optional<Published> inMicelles(String preservative, String surfactant) {
        return Optional.ofNullable(micelles.get(preservative)).map(known -> known.get(surfactant));
    }
}
