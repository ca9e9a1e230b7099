package stillroom.science.blend;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.LocalizedOptimFormats;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;
import org.ojalgo.type.context.NumberContext;

/** The same blends in general-purpose engines; costs per fraction only. */
public final class OtherSolvers {
    private OtherSolvers() {}

    /** @return the objective, or NaN where ojAlgo has not proven an optimum within the time */
    public static double ojAlgo(Blend blend, long milliseconds) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        model.options.time_abort = milliseconds;
        model.options.time_suffice = milliseconds;
        model.options.integer(IntegerStrategy.DEFAULT.withGapTolerance(NumberContext.of(12, 10)));
        List<Variable> fractions = new ArrayList<>();
        for (Ingredient ingredient : blend.ingredients()) {
            fractions.add(model.newVariable(ingredient.name())
                    .lower(0)
                    .upper(ingredient.most())
                    .weight(ingredient.cost().perFraction()));
        }
        Expression whole = model.newExpression("whole").level(1);
        fractions.forEach(fraction -> whole.set(fraction, 1));
        blend.limits().forEach(limit -> add(model, limit, fractions));
        if (!blend.useLimits().isEmpty()) {
            count(model, blend, fractions);
        }
        Optimisation.Result result = model.minimise();
        return result.getState() == Optimisation.State.OPTIMAL ? result.getValue() : Double.NaN;
    }

    private static void add(ExpressionsBasedModel model, Limit limit, List<Variable> fractions) {
        Expression expression = model.newExpression(limit.name());
        for (int j = 0; j < fractions.size(); j++) {
            expression.set(fractions.get(j), limit.values().get(j));
        }
        if (!Double.isInfinite(limit.min())) {
            expression.lower(limit.min());
        }
        if (!Double.isInfinite(limit.max())) {
            expression.upper(limit.max());
        }
    }

    private static void count(ExpressionsBasedModel model, Blend blend, List<Variable> fractions) {
        List<Variable> used = new ArrayList<>();
        for (int j = 0; j < blend.size(); j++) {
            Ingredient ingredient = blend.ingredients().get(j);
            Variable use = model.newVariable("use " + ingredient.name()).binary();
            model.newExpression("most " + j).upper(0).set(fractions.get(j), 1).set(use, -ingredient.most());
            model.newExpression("least " + j).lower(0).set(fractions.get(j), 1).set(use, -ingredient.leastIfUsed());
            used.add(use);
        }
        for (UseLimit limit : blend.useLimits()) {
            Expression count = model.newExpression(limit.name()).upper(limit.atMost());
            limit.of().forEach(j -> count.set(used.get(j), 1));
        }
    }

    /** The linear blend, without least doses and use limits, by the simplex of Hipparchus. */
    public static double hipparchus(Blend blend) {
        int count = blend.size();
        double[] costs = blend.ingredients().stream()
                .mapToDouble(each -> each.cost().perFraction())
                .toArray();
        List<LinearConstraint> rows = new ArrayList<>();
        double[] ones = new double[count];
        Arrays.fill(ones, 0, count - blend.beside(), 1);
        rows.add(new LinearConstraint(ones, Relationship.EQ, 1));
        for (int j = 0; j < count; j++) {
            double[] unit = new double[count];
            unit[j] = 1;
            rows.add(new LinearConstraint(
                    unit, Relationship.LEQ, blend.ingredients().get(j).most()));
        }
        for (Limit limit : blend.limits()) {
            double[] values =
                    limit.values().stream().mapToDouble(Double::doubleValue).toArray();
            if (!Double.isInfinite(limit.min())) {
                rows.add(new LinearConstraint(values, Relationship.GEQ, limit.min()));
            }
            if (!Double.isInfinite(limit.max())) {
                rows.add(new LinearConstraint(values, Relationship.LEQ, limit.max()));
            }
        }
        return new SimplexSolver(1e-9, 20, 1e-12)
                .optimize(
                        new MaxIter(100_000),
                        new LinearObjectiveFunction(costs, 0),
                        new LinearConstraintSet(rows),
                        GoalType.MINIMIZE,
                        new NonNegativeConstraint(true))
                .getValue();
    }

    /** Whether the linear blend, without least doses and use limits, exists, as the simplex of Hipparchus says. */
    static boolean isPossible(Blend blend) {
        try {
            hipparchus(blend);
            return true;
        } catch (MathIllegalStateException impossible) {
            if (impossible.getSpecifier() != LocalizedOptimFormats.NO_FEASIBLE_SOLUTION) {
                throw impossible;
            }
            return false;
        }
    }
}
