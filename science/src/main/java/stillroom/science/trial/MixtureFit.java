package stillroom.science.trial;

import java.util.List;
import stillroom.science.mixture.MixtureModel;
import stillroom.science.mixture.MixtureRegion;
import stillroom.science.mixture.Term;
import stillroom.science.regression.LinearFit;

/**
 * A Scheffé model fitted to trials. Coefficients are those of the actual fractions; blocks, if any, follow the terms as
 * sum-to-zero shifts.
 *
 * @param region within which it holds
 * @param model with the terms kept
 * @param taken on which runs and days it rests
 * @param fit of the terms, then of all blocks but the last
 * @param said what the maker ought to know of it, in sentences
 */
public record MixtureFit(MixtureRegion region, MixtureModel model, Taken taken, LinearFit fit, List<String> said) {
    public MixtureFit {
        said = List.copyOf(said);
    }

    /** Estimate of the mean response, in the middle of the blocks. @param point fractions, then coded process variables */
    public double at(double[] point) {
        return fit.at(row(point));
    }

    /** Half the width of the 95 % interval of the mean response. */
    public double halfWidth(double[] point) {
        return fit.meanHalfWidth(row(point));
    }

    /** Half the width of the 95 % interval of one further trial. */
    public double singleHalfWidth(double[] point) {
        return fit.singleHalfWidth(row(point));
    }

    /** Variance of the mean response in units of the residual variance [-]. */
    public double variance(double[] point) {
        return fit.variance(row(point));
    }

    public List<Term> terms() {
        return model.terms();
    }

    private double[] row(double[] point) {
        return java.util.Arrays.copyOf(
                model.at(point), model.terms().size() + taken.days().size() - 1);
    }
}
