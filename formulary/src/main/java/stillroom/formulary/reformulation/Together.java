package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.science.blend.Blend;
import stillroom.science.blend.BlendSolver;
import stillroom.science.blend.Cost;
import stillroom.science.blend.Explanation;
import stillroom.science.blend.Ingredient;
import stillroom.science.blend.Limit;
import stillroom.science.blend.Patience;
import stillroom.science.blend.Requirement.Kind;
import stillroom.science.blend.UseLimit;

/**
 * What must give way together where nothing suffices by itself: the least sum of passings, each in parts of its own bound. Figures and
 * means first; where these do not suffice, materials too may be dosed beyond their bounds, but not what is to go.
 */
final class Together {
    /** One more material that must be dosed otherwise weighs as much as a bound that is passed by a twentieth. */
    private static final double ANOTHER = 0.05;

    /** A bound of less than this part of what one material could bring counts as so much. */
    private static final double LEAST_BOUND = 0.01;

    private static final double NOTHING = 1e-9;

    private final Problem problem;
    private final WordsOfConflict words;
    private final Patience patience;
    /** Materials that may be dosed beyond their bounds, each as a copy of itself behind the candidates. */
    private final List<Integer> copied = new ArrayList<>();

    private final List<End> ends = new ArrayList<>();

    /** One end of a requirement, by how much a passing of 1 lets it be passed, and what that weighs. */
    private record End(int of, boolean low, double measure, double weight) {}

    private Together(Problem problem, Patience patience) {
        this.problem = problem;
        this.words = new WordsOfConflict(problem);
        this.patience = patience;
        for (int i = 0; i < problem.requirements().size(); i++) {
            ends(i, problem.requirements().get(i));
        }
    }

    /** Empty where the least is one by itself, nothing of the maker's suffices, or time is over. */
    static Optional<Relief> ofFigures(Problem problem, Patience patience) {
        return new Together(problem, patience).least();
    }

    /** For what no figures suffice for. */
    static Optional<Relief> withMaterials(Problem problem, Patience patience, Explanation why) {
        return new Together(problem, patience).copying(why).least();
    }

    private void ends(int i, Requirement requirement) {
        switch (requirement.kind()) {
            case FIGURE -> {
                end(i, true, requirement.min(), requirement.values());
                end(i, false, requirement.max(), requirement.values());
            }
            case MEAN, PART -> {
                Requirement.Mean mean = requirement.mean().orElseThrow();
                double mass = 0;
                for (int j = 0; j < mean.masses().size(); j++) {
                    mass += mean.masses().get(j) * problem.candidates().get(j).now();
                }
                ends.add(new End(i, true, Math.abs(mean.bound()) * mass, 1));
            }
            case LAW -> {
                // Not the maker's to move.
            }
        }
    }

    private void end(int i, boolean low, double bound, List<Double> values) {
        if (Double.isFinite(bound)) {
            double scale = values.stream().mapToDouble(Math::abs).max().orElse(1);
            double measure = Math.abs(bound) + scale;
            ends.add(new End(i, low, measure, measure / (Math.abs(bound) + LEAST_BOUND * scale)));
        }
    }

    private Together copying(Explanation why) {
        for (int j = 0; j < problem.candidates().size(); j++) {
            Candidate one = problem.candidates().get(j);
            Ingredient ingredient = problem.blend().ingredients().get(j);
            boolean isFree = !one.fixed() && !ingredient.required() && !isToGo(j);
            if (isFree && (one.now() > 0 || isNamed(why, j))) {
                copied.add(j);
            }
        }
        return this;
    }

    private static boolean isNamed(Explanation why, int j) {
        return why.conflict().stream()
                .anyMatch(each -> each.of() == j && (each.kind() == Kind.MOST || each.kind() == Kind.LEAST_DOSE));
    }

    private Optional<Relief> least() {
        return BlendSolver.solve(elastic(), patience).mix().flatMap(mix -> relief(mix.fractions()));
    }

    private Blend elastic() {
        List<Ingredient> ingredients = new ArrayList<>();
        problem.blend()
                .ingredients()
                .forEach(one -> ingredients.add(
                        new Ingredient(one.name(), one.leastIfUsed(), one.most(), one.required(), Cost.NONE)));
        for (int j : copied) {
            ingredients.add(new Ingredient(name(j), 0, 1, false, new Cost(1, ANOTHER, 0, 0)));
        }
        ends.forEach(end -> ingredients.add(new Ingredient("passing", 0, 1, false, Cost.perFraction(end.weight()))));
        List<Limit> limits = new ArrayList<>();
        for (int i = 0; i < problem.blend().limits().size(); i++) {
            limits.add(widened(i));
        }
        return new Blend(ingredients, limits, useLimits(), ends.size());
    }

    private boolean isToGo(int j) {
        return problem.wish().without().contains(problem.candidates().get(j).key());
    }

    private String name(int j) {
        return problem.candidates().get(j).card().name();
    }

    private Limit widened(int i) {
        Limit limit = problem.blend().limits().get(i);
        List<Double> values = new ArrayList<>(limit.values());
        copied.forEach(j -> values.add(limit.values().get(j)));
        for (End end : ends) {
            values.add(end.of() == i ? (end.low() ? end.measure() : -end.measure()) : 0.0);
        }
        return new Limit(limit.name(), values, limit.min(), limit.max());
    }

    /** A copy counts as its material, of which either is used. */
    private List<UseLimit> useLimits() {
        int size = problem.candidates().size();
        List<UseLimit> limits = new ArrayList<>();
        for (UseLimit limit : problem.blend().useLimits()) {
            Set<Integer> all = new HashSet<>(limit.of());
            for (int k = 0; k < copied.size(); k++) {
                if (limit.of().contains(copied.get(k))) {
                    all.add(size + k);
                }
            }
            limits.add(new UseLimit(limit.name(), all, limit.atMost()));
        }
        for (int k = 0; k < copied.size(); k++) {
            limits.add(new UseLimit(name(copied.get(k)), Set.of(copied.get(k), size + k), 1));
        }
        return limits;
    }

    private Optional<Relief> relief(List<Double> solved) {
        int size = problem.candidates().size();
        List<Double> fractions = new ArrayList<>(solved.subList(0, size));
        List<Explanation.Relief> parts = new ArrayList<>();
        for (int k = 0; k < copied.size(); k++) {
            double dose = solved.get(size + k);
            int j = copied.get(k);
            if (dose > NOTHING) {
                fractions.set(j, dose);
                boolean more = dose > problem.blend().ingredients().get(j).most();
                Kind kind = more ? Kind.MOST : Kind.LEAST_DOSE;
                parts.add(new Explanation.Relief(new stillroom.science.blend.Requirement(kind, j), dose));
            }
        }
        for (int k = 0; k < ends.size(); k++) {
            if (solved.get(size + copied.size() + k) > NOTHING) {
                End end = ends.get(k);
                Kind kind = end.low() ? Kind.LIMIT_MIN : Kind.LIMIT_MAX;
                double to = problem.requirements().get(end.of()).of(fractions);
                parts.add(new Explanation.Relief(new stillroom.science.blend.Requirement(kind, end.of()), to));
            }
        }
        return parts.size() > 1 && parts.stream().allMatch(part -> Double.isFinite(part.to()))
                ? Optional.of(words.together(parts))
                : Optional.empty();
    }
}
