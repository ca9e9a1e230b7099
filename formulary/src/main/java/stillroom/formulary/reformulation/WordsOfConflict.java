package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import stillroom.science.blend.Explanation;
import stillroom.science.blend.Ingredient;
import stillroom.science.blend.Requirement.Kind;

/** What stands against each other, in the maker's words. */
final class WordsOfConflict {
    /** Parts of which a mass fraction is written. */
    private static final double FINEST = 1e5;
    /** What a search finds lies at the edge of what is possible; a step beyond is asked for. */
    private static final double EDGE = 0.5;

    private final Problem problem;

    WordsOfConflict(Problem problem) {
        this.problem = problem;
    }

    List<String> conflict(Explanation why) {
        return why.conflict().stream()
                .filter(each -> each.kind() != Kind.LIMIT_MAX || !why.conflict().contains(other(each)))
                .map(each -> isBothEnds(each, why) ? between(each.of()) : words(each))
                .distinct()
                .toList();
    }

    private static stillroom.science.blend.Requirement other(stillroom.science.blend.Requirement end) {
        Kind kind = end.kind() == Kind.LIMIT_MIN ? Kind.LIMIT_MAX : Kind.LIMIT_MIN;
        return new stillroom.science.blend.Requirement(kind, end.of());
    }

    private static boolean isBothEnds(stillroom.science.blend.Requirement each, Explanation why) {
        return each.kind() == Kind.LIMIT_MIN && why.conflict().contains(other(each));
    }

    private String between(int of) {
        Requirement requirement = problem.requirements().get(of);
        String unit = Wording.unit(requirement, problem.present().currency());
        return requirement.name() + " between " + Wording.figure(requirement.min()) + " and "
                + Wording.figure(requirement.max()) + unit;
    }

    private String words(stillroom.science.blend.Requirement requirement) {
        int of = requirement.of();
        Ingredient ingredient = problem.blend().ingredients().get(of(requirement));
        if (isMaterial(requirement) && problem.candidates().get(of).fixed()) {
            return name(of) + " stays as it is, " + Wording.percent(ingredient.most());
        }
        return switch (requirement.kind()) {
            case LEAST_DOSE -> name(of) + " is used from " + Wording.percent(ingredient.leastIfUsed()) + " on";
            case PRESENCE -> name(of) + " stays in";
            case MOST -> most(of, ingredient);
            case USE_LIMIT -> problem.blend().useLimits().get(of).name();
            case LIMIT_MIN -> bound(of, true, problem.requirements().get(of).min());
            case LIMIT_MAX -> bound(of, false, problem.requirements().get(of).max());
        };
    }

    private static boolean isMaterial(stillroom.science.blend.Requirement requirement) {
        return switch (requirement.kind()) {
            case LEAST_DOSE, PRESENCE, MOST -> true;
            case USE_LIMIT, LIMIT_MIN, LIMIT_MAX -> false;
        };
    }

    private static int of(stillroom.science.blend.Requirement requirement) {
        return isMaterial(requirement) ? requirement.of() : 0;
    }

    private String most(int of, Ingredient ingredient) {
        Candidate one = problem.candidates().get(of);
        if (isToGo(of)) {
            return name(of) + " is to go";
        }
        double onShelf = problem.shelf().most(one.key());
        String why = ingredient.most() >= onShelf ? ", as much as the shelf holds for this batch" : "";
        return ingredient.most() == 0
                ? name(of) + " may not be used" + (onShelf == 0 ? ", as the shelf holds none" : "")
                : name(of) + " is at most " + Wording.percent(ingredient.most()) + why;
    }

    private String bound(int of, boolean low, double bound) {
        Requirement requirement = problem.requirements().get(of);
        if (requirement.mean().isPresent()) {
            return mean(requirement, requirement.mean().get().bound());
        }
        String unit = Wording.unit(requirement, problem.present().currency());
        String law = requirement.kind() == Requirement.Kind.LAW ? " (law)" : "";
        return requirement.name() + (low ? " at least " : " at most ") + Wording.figure(bound) + unit + law;
    }

    private static String mean(Requirement requirement, double bound) {
        boolean isLeast = requirement.mean().orElseThrow().isLeast();
        return requirement.name() + (isLeast ? " at least " : " at most ") + Wording.figure(bound);
    }

    /** Only what the maker may move: not the law. */
    List<Relief> reliefs(Explanation why) {
        List<Relief> reliefs = new ArrayList<>(alone(why));
        boolean allTheMakers = why.together().stream().allMatch(relief -> isTheMakers(relief.requirement()));
        if (why.together().size() > 1 && allTheMakers) {
            reliefs.add(together(why.together()));
        }
        return reliefs.stream().distinct().toList();
    }

    /** Each of which suffices by itself. */
    List<Relief> alone(Explanation why) {
        List<Relief> reliefs = new ArrayList<>();
        for (Explanation.Relief relief : why.alone()) {
            if (isTheMakers(relief.requirement())) {
                Wish wish = wish(problem.wish(), relief);
                reliefs.add(new Relief("Allow " + words(relief) + ".", wish));
            }
        }
        return reliefs.stream().distinct().toList();
    }

    /** Several as one. */
    Relief together(List<Explanation.Relief> parts) {
        Wish wish = problem.wish();
        for (Explanation.Relief part : parts) {
            wish = wish(wish, part);
        }
        List<String> all = parts.stream().map(this::words).toList();
        return new Relief("Allow together " + String.join(", and ", all) + ".", wish);
    }

    boolean isTheMakers(stillroom.science.blend.Requirement requirement) {
        return switch (requirement.kind()) {
            case LIMIT_MIN, LIMIT_MAX ->
                problem.requirements().get(requirement.of()).kind() == Requirement.Kind.FIGURE;
            case USE_LIMIT -> problem.wish().atMost().isPresent() && requirement.of() == 0;
            case LEAST_DOSE, PRESENCE -> true;
            case MOST -> !isToGo(requirement.of());
        };
    }

    /** There is no more of it, so that it is no way out. */
    private boolean isToGo(int of) {
        return problem.wish().without().contains(problem.candidates().get(of).key());
    }

    /** A figure that the maker keeps, not a material. */
    boolean isABand(stillroom.science.blend.Requirement requirement) {
        return !isMaterial(requirement) && isTheMakers(requirement);
    }

    private String words(Explanation.Relief relief) {
        int of = relief.requirement().of();
        return switch (relief.requirement().kind()) {
            case LEAST_DOSE -> "as little as " + percent(low(relief)) + " of " + name(of);
            case PRESENCE -> "it without " + name(of);
            case MOST -> percent(high(relief)) + " of " + name(of);
            case USE_LIMIT -> (int) relief.to() + " ingredients";
            case LIMIT_MIN, LIMIT_MAX -> Wording.lower(limit(relief));
        };
    }

    /** A mean is passed by the mean, though it is kept by a sum. */
    private String limit(Explanation.Relief relief) {
        int of = relief.requirement().of();
        Requirement requirement = problem.requirements().get(of);
        return requirement.mean().isPresent()
                ? mean(requirement, relief.to())
                : bound(of, relief.requirement().kind() == Kind.LIMIT_MIN, relief.to());
    }

    private static String percent(double fraction) {
        return Wording.percent(fraction);
    }

    /** Formulas are written to a thousandth of a percent. */
    private static double low(Explanation.Relief relief) {
        return Math.max(0, Math.floor(relief.to() * FINEST - EDGE) / FINEST);
    }

    private static double high(Explanation.Relief relief) {
        return Math.min(1, Math.ceil(relief.to() * FINEST + EDGE) / FINEST);
    }

    private Wish wish(Wish wish, Explanation.Relief relief) {
        int of = relief.requirement().of();
        return switch (relief.requirement().kind()) {
            case LEAST_DOSE ->
                allowed(
                        wish,
                        of,
                        low(relief),
                        problem.blend().ingredients().get(of).most());
            case PRESENCE ->
                allowed(wish, of, 0, problem.blend().ingredients().get(of).most());
            case MOST -> allowed(wish, of, problem.blend().ingredients().get(of).leastIfUsed(), high(relief));
            case USE_LIMIT -> wish.atMost(OptionalInt.of((int) relief.to()));
            case LIMIT_MIN, LIMIT_MAX ->
                problem.requirements()
                        .get(of)
                        .band()
                        .map(band -> band.widened().to(wish, relief.to()))
                        .orElse(wish);
        };
    }

    private Wish allowed(Wish wish, int of, double low, double high) {
        return wish.allowing(problem.candidates().get(of).key(), low, high);
    }

    private String name(int of) {
        return problem.candidates().get(of).card().name();
    }
}
