package stillroom.science.regression;

import java.util.List;

/**
 * One row of a fit.
 *
 * @param regressors one per coefficient
 * @param response what was measured [unit of the response]
 * @param group rows of the same group are repeats of one setting; any number
 */
public record Observation(List<Double> regressors, double response, int group) {
    public Observation {
        regressors = List.copyOf(regressors);
    }
}
