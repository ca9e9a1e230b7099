package stillroom.science.blend;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.science.blend.Explanation.Relief;

/** Finds how little of a requirement must be given up so that a blend exists. */
final class Reliefs {
    private final Blend blend;
    private final Patience patience;

    Reliefs(Blend blend, Patience patience) {
        this.blend = blend;
        this.patience = patience;
    }

    /** The nearest bound with which a blend exists while all else stands; empty where none suffices, or none was found in time. */
    Optional<Relief> alone(Requirement requirement) {
        return switch (requirement.kind()) {
            case LIMIT_MIN, LIMIT_MAX -> passing(List.of(requirement)).stream().findFirst();
            case USE_LIMIT -> moreUsed(requirement);
            case MOST -> bound(requirement, 1);
            case LEAST_DOSE -> bound(requirement, -1);
            case PRESENCE -> Optional.empty();
        };
    }

    /** Least sum of passings of the limits' bounds, each in the measure of its limit. */
    List<Relief> passing(List<Requirement> soft) {
        List<Ingredient> ingredients = new ArrayList<>(free().ingredients());
        List<Limit> limits = new ArrayList<>(blend.limits());
        for (Requirement requirement : soft) {
            ingredients.add(new Ingredient("passing", 0, 1, false, Cost.perFraction(1)));
        }
        for (int i = 0; i < limits.size(); i++) {
            limits.set(i, widened(limits.get(i), i, soft));
        }
        Blend elastic = new Blend(ingredients, limits, blend.useLimits(), blend.beside() + soft.size());
        return BlendSolver.solve(elastic, patience)
                .mix()
                .map(mix -> reliefs(mix, soft))
                .orElse(List.of());
    }

    private List<Relief> reliefs(Mix mix, List<Requirement> soft) {
        List<Relief> reliefs = new ArrayList<>();
        for (int k = 0; k < soft.size(); k++) {
            double passed = mix.fractions().get(blend.size() + k) * measure(soft.get(k));
            if (passed > 0) {
                Limit limit = blend.limits().get(soft.get(k).of());
                boolean low = soft.get(k).kind() == Requirement.Kind.LIMIT_MIN;
                reliefs.add(new Relief(soft.get(k), low ? limit.min() - passed : limit.max() + passed));
            }
        }
        return reliefs;
    }

    private Limit widened(Limit limit, int i, List<Requirement> soft) {
        List<Double> values = new ArrayList<>(limit.values());
        for (Requirement each : soft) {
            double sign = each.kind() == Requirement.Kind.LIMIT_MIN ? 1 : -1;
            values.add(each.of() == i ? sign * measure(each) : 0.0);
        }
        return new Limit(limit.name(), values, limit.min(), limit.max());
    }

    /** Large enough that passing by one whole measure lets everything in. */
    private double measure(Requirement requirement) {
        Limit limit = blend.limits().get(requirement.of());
        double bound = requirement.kind() == Requirement.Kind.LIMIT_MIN ? limit.min() : limit.max();
        return Math.abs(bound) + limit.scale();
    }

    private Optional<Relief> moreUsed(Requirement requirement) {
        UseLimit limit = blend.useLimits().get(requirement.of());
        List<UseLimit> others = new ArrayList<>(blend.useLimits());
        for (int more = limit.atMost() + 1; more <= limit.of().size(); more++) {
            others.set(requirement.of(), new UseLimit(limit.name(), limit.of(), more));
            BlendAnswer answer = BlendSolver.solve(free().withUseLimits(others), patience);
            if (answer.mix().isPresent()) {
                return Optional.of(new Relief(requirement, more));
            }
            if (answer instanceof BlendAnswer.Stopped) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** Least raise of an ingredient's most (direction 1), or least cut of its least dose (-1). */
    private Optional<Relief> bound(Requirement requirement, double direction) {
        Ingredient old = blend.ingredients().get(requirement.of());
        List<Ingredient> ingredients = new ArrayList<>(free().ingredients());
        double least = direction > 0 ? old.leastIfUsed() : 0;
        double most = direction > 0 ? 1 : old.most();
        ingredients.set(
                requirement.of(), new Ingredient(old.name(), least, most, old.required(), Cost.perFraction(direction)));
        return BlendSolver.solve(blend.withIngredients(ingredients), patience)
                .mix()
                .map(mix -> new Relief(requirement, mix.fractions().get(requirement.of())));
    }

    private Blend free() {
        Set<Requirement> all = new LinkedHashSet<>(Relaxed.requirements(blend));
        return Relaxed.keeping(blend, all);
    }

    static List<Requirement> limits(Blend blend) {
        return Relaxed.requirements(blend).stream()
                .filter(each -> each.kind() == Requirement.Kind.LIMIT_MIN || each.kind() == Requirement.Kind.LIMIT_MAX)
                .toList();
    }
}
