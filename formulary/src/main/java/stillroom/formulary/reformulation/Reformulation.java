package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stillroom.science.blend.Blend;
import stillroom.science.blend.BlendAnswer;
import stillroom.science.blend.BlendSolver;
import stillroom.science.blend.Explanation;
import stillroom.science.blend.Mix;
import stillroom.science.blend.Patience;
import stillroom.science.blend.WhyNot;

/** Makes a formula anew: several different answers within the bands, best first, each judged as on the formula page. */
public final class Reformulation {
    /** Answers that the evaluation refuses are passed over; so many in all are looked at. */
    private static final int MOST_LOOKED_AT = 24;

    private final Recast recast;
    private final Shelf shelf;
    private final Patience patience;
    private final Judging judging;

    public Reformulation(Recast recast, Shelf shelf, Patience patience) {
        this.recast = recast;
        this.shelf = shelf;
        this.patience = patience;
        this.judging = new Judging(recast);
    }

    /** @throws IllegalArgumentException where a line has no card, or the goal asks for a price that is not known */
    public Result solve(Wish wish) {
        return solve(wish, answer -> {});
    }

    /** @param found told of each answer as soon as it is there */
    public Result solve(Wish wish, Consumer<Answer> found) {
        Problem problem = Problem.of(recast, shelf, wish);
        refuseUnknown(problem, wish);
        List<Answer> answers = new ArrayList<>();
        List<Answer> behind = new ArrayList<>();
        List<String> refused = new ArrayList<>();
        boolean stopped = false;
        boolean more = true;
        for (int look = 0; more && look < MOST_LOOKED_AT && answers.size() < wish.answers(); look++) {
            AgainstOils.Solved search = AgainstOils.solve(problem, patience);
            BlendAnswer solved = search.answer();
            if (solved.mix().isEmpty()) {
                if (look == 0 && solved instanceof BlendAnswer.Infeasible) {
                    return impossible(problem, search.impossible())
                            .with(new Buying(recast, shelf, wish, judging, patience).search());
                }
                stopped |= solved instanceof BlendAnswer.Stopped;
                more = false;
                break;
            }
            Mix mix = solved.mix().get();
            boolean proven = solved instanceof BlendAnswer.Optimal;
            stopped |= !proven;
            Answer answer =
                    judging.answer(problem, mix, objective(solved), proven, Prices.of(search.problem(), mix, patience));
            if (!answers.isEmpty() && isNoBetterThanNow(wish, answer)) {
                more = false;
                break;
            }
            Set<Integer> aside = used(problem, mix, true);
            if (!answer.breaches().isEmpty()) {
                refused.add(refusal(problem, aside.isEmpty() ? used(problem, mix, false) : aside, answer));
            } else if (answer.isSetBehind()) {
                behind.add(answer);
            } else {
                answers.add(answer);
                found.accept(answer);
                aside = largest(problem, mix);
            }
            aside = aside.isEmpty() ? used(problem, mix, false) : aside;
            more = !aside.isEmpty();
            problem = problem.not(aside);
        }
        fill(answers, behind, wish.answers(), found);
        return new Result(answers, List.of(), List.of(), refused, more, stopped);
    }

    /** "Cheaper" that is dearer than now is no answer, where nothing need change. */
    private static boolean isNoBetterThanNow(Wish wish, Answer answer) {
        boolean mayStay = wish.without().isEmpty() && wish.useUp().isEmpty();
        return mayStay && wish.goal().only().map(answer::isNoBetterThanBefore).orElse(false);
    }

    /** What the evaluation likes less comes after all else, and only where places are left. */
    private static void fill(List<Answer> answers, List<Answer> behind, int wanted, Consumer<Answer> found) {
        for (int k = 0; k < behind.size() && answers.size() < wanted; k++) {
            answers.add(behind.get(k));
            found.accept(behind.get(k));
        }
    }

    private static String refusal(Problem problem, Set<Integer> together, Answer answer) {
        List<Candidate> candidates = problem.candidates();
        return together.stream()
                        .sorted()
                        .map(j -> candidates.get(j).card().name())
                        .collect(Collectors.joining(" and ", "With ", ": "))
                + answer.breaches().get(0).says();
    }

    private static double objective(BlendAnswer solved) {
        return solved.match(BlendAnswer.Optimal::objective, BlendAnswer.Stopped::objective, none -> Double.NaN);
    }

    /**
     * The newcomer of which there is most: without it the next answer is really another one. What is to be used up is not left
     * aside; without a newcomer it is all that may move, which is not used together a second time.
     */
    private static Set<Integer> largest(Problem problem, Mix mix) {
        return used(problem, mix, true).stream()
                .filter(j -> !problem.wish()
                        .useUp()
                        .contains(problem.candidates().get(j).key()))
                .max(Comparator.comparingDouble(j -> mix.fractions().get(j)))
                .map(Set::of)
                .orElse(Set.of());
    }

    private static Set<Integer> used(Problem problem, Mix mix, boolean newcomersOnly) {
        return IntStream.range(0, problem.candidates().size())
                .filter(j -> mix.fractions().get(j) > 0
                        && !problem.candidates().get(j).fixed())
                .filter(j -> !newcomersOnly || problem.candidates().get(j).isNewcomer())
                .boxed()
                .collect(Collectors.toSet());
    }

    private Result impossible(Problem problem, List<Problem> parts) {
        Advice advice = new Advice(problem);
        if (!parts.isEmpty()) {
            OffOils off = new OffOils(problem, patience);
            List<Relief> ways = off.relief().filter(advice::isSound).stream().toList();
            return new Result(List.of(), off.conflict(parts), ways, List.of(), false, false);
        }
        WordsOfConflict words = new WordsOfConflict(problem);
        Explanation why = WhyNot.explain(problem.blend(), patience, words::isTheMakers);
        List<Relief> reliefs = new ArrayList<>(words.alone(why));
        reliefs.addAll(new MeanReliefs(problem, patience).of(why));
        reliefs.addAll(together(problem, why, reliefs.isEmpty()));
        if (reliefs.isEmpty() && problem.wish().atMost().isPresent()) {
            reliefs.addAll(withMoreIngredients(problem.wish()));
        }
        List<Relief> ways = reliefs.stream()
                .map(way -> new OffOils(Problem.of(recast, shelf, way.wish()), patience).and(way))
                .filter(advice::isSound)
                .toList();
        return new Result(List.of(), words.conflict(why), ways, List.of(), false, !why.smallest());
    }

    /** The least sum of several; materials give way only where nothing else does. */
    private List<Relief> together(Problem problem, Explanation why, boolean isLast) {
        return Together.ofFigures(problem, patience)
                .or(() -> isLast ? Together.withMaterials(problem, patience, why) : Optional.empty())
                .stream()
                .toList();
    }

    /** Where more than one thing is in the way and the count is among them: what else must give way, and the fewest that then do. */
    private List<Relief> withMoreIngredients(Wish wish) {
        Problem uncounted = Problem.of(recast, shelf, wish.atMost(OptionalInt.empty()));
        WordsOfConflict words = new WordsOfConflict(uncounted);
        Explanation why = WhyNot.explain(uncounted.blend(), patience, words::isTheMakers);
        List<Relief> others = new ArrayList<>(words.alone(why));
        others.addAll(together(uncounted, why, others.isEmpty()));
        List<Relief> reliefs = new ArrayList<>();
        for (Relief relief : others) {
            Blend counted = Problem.of(recast, shelf, relief.wish().with(Goal.FEWEST, 1))
                    .blend();
            BlendSolver.solve(counted, patience).mix().ifPresent(mix -> {
                String both = relief.words().substring(0, relief.words().length() - 1) + ", and " + mix.used()
                        + " ingredients.";
                reliefs.add(new Relief(both, relief.wish().atMost(OptionalInt.of(mix.used()))));
            });
        }
        return reliefs;
    }

    private static void refuseUnknown(Problem problem, Wish wish) {
        List<Candidate> lines = problem.candidates().stream()
                .filter(one -> one.now() > 0 && !wish.without().contains(one.key()))
                .toList();
        if (wish.goal().asksCost() || wish.bands().cost().isPresent()) {
            refuse(
                    "no price",
                    lines.stream().filter(one -> one.costPer100g().isEmpty()).toList());
        }
    }

    private static void refuse(String what, List<Candidate> missing) {
        if (!missing.isEmpty()) {
            throw new IllegalArgumentException("There is " + what + " on the card of "
                    + missing.stream().map(one -> one.card().name()).distinct().collect(Collectors.joining(", "))
                    + ".");
        }
    }

    /**
     * One goal against another, from the best of the one to the best of the other.
     *
     * @param points two or more
     * @param found told of the curve so far at each new point
     */
    public List<TradeOff> curve(Wish wish, Measure first, Measure second, int points, Consumer<List<TradeOff>> found) {
        return new Curve(this, first, second).of(wish, points, found);
    }
}
