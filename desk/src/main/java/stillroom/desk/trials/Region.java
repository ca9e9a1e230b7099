package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.List;
import stillroom.formulary.trial.TrialSet;
import stillroom.science.mixture.Blending;
import stillroom.science.mixture.LinearConstraint;
import stillroom.science.mixture.MixtureModel;
import stillroom.science.mixture.MixtureRegion;
import stillroom.science.mixture.ProcessTerms;

/** The border between percent of the formula, which people read, and fractions of the components, which are computed. */
final class Region {
    private Region() {}

    /** @throws IllegalArgumentException with a sentence where a constraint cannot be read */
    static MixtureRegion of(List<TrialSet.Component> components, double share, List<String> constraints) {
        List<Double> lower = new ArrayList<>();
        List<Double> upper = new ArrayList<>();
        for (TrialSet.Component one : components) {
            lower.add(Math.min(1, one.low() / share));
            upper.add(Math.min(1, one.high() / share));
        }
        List<LinearConstraint> limits = constraints.stream()
                .map(text -> new ConstraintReader(components.size()).sentence(text))
                .map(limit -> new LinearConstraint(limit.coefficients(), limit.min() / share, limit.max() / share))
                .toList();
        return new MixtureRegion(lower, upper, limits);
    }

    static MixtureRegion of(TrialSet set) {
        return of(set.components(), set.share(), set.constraints());
    }

    static MixtureModel model(TrialSet set, Blending blending) {
        return MixtureModel.of(
                set.components().size(), blending, set.variables().size(), ProcessTerms.LINEAR);
    }

    static double coded(TrialSet.Variable variable, double actual) {
        return (2 * actual - variable.low() - variable.high()) / (variable.high() - variable.low());
    }

    static double actual(TrialSet.Variable variable, double coded) {
        return (variable.low() + variable.high()) / 2 + coded * (variable.high() - variable.low()) / 2;
    }
}
