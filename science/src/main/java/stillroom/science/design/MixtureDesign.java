package stillroom.science.design;

import java.util.List;
import java.util.Optional;

/**
 * Runs to be made, and how good they are together.
 *
 * @param runs those already made first, then by block
 * @param d det(X'X)^(1/p) / n in L-pseudocomponents, process variables coded, blocks left out [-]
 * @param dCeiling the D of the best design whose runs may have any weights, so that no design has more [-]
 * @param meanVariance mean of f'(X'X)⁻¹f over the region, in units of the residual variance [-]
 * @param momentsExact whether that mean was integrated exactly, or sampled where the region has too many corners
 * @param meanVarianceFloor no design of so many runs has a smaller mean variance; where I was asked for
 * @param blockEfficiency 1 where blocks cost the coefficients nothing, per coefficient [-]
 * @param repeats runs that repeat an earlier one, which leaves pure error
 * @param effort how it was found
 */
public record MixtureDesign(
        List<Run> runs,
        double d,
        Optional<Double> dCeiling,
        double meanVariance,
        boolean momentsExact,
        Optional<Double> meanVarianceFloor,
        double blockEfficiency,
        int repeats,
        Effort effort) {
    public MixtureDesign {
        runs = List.copyOf(runs);
    }

    /**
     * @param candidates points among which runs were exchanged
     * @param starts random starts and shaken restarts
     * @param multiplications about how many
     * @param stopped whether a limit came before the search had settled
     */
    public record Effort(int candidates, int starts, long multiplications, boolean stopped) {}
}
