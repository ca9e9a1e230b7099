package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.Function;
import stillroom.formulary.reformulation.Requirement.Kind;
import stillroom.formulary.reformulation.Requirement.Mean;
import stillroom.science.blend.Blend;
import stillroom.science.blend.BlendAnswer;
import stillroom.science.blend.BlendSolver;
import stillroom.science.blend.Limit;
import stillroom.science.blend.Patience;

/**
 * Keeps the emulsifiers' HLB near what the oils require, where both move. The difference of two means is no sum over the materials,
 * as it multiplies emulsifiers with oils; but with the required HLB between two values it lies between two sums. So the range of the
 * required HLB is cut in parts, most promising first, until the best blend of a part keeps the distance: nothing better keeps it then,
 * but for {@value #WITHIN} units.
 */
final class AgainstOils {
    static final double WITHIN = 0.005;
    /** Where nothing else is asked; the evaluation remarks on more. A rule of thumb; common practice, no source. */
    private static final double NEAR = 2;
    /** A part is not cut nearer to its ends than this part of it. */
    private static final double END = 0.1;

    private final double room;
    private final Patience patience;
    private final Function<Problem, Blend> blend;
    private final List<Problem> impossible = new ArrayList<>();
    private long nodes;

    private AgainstOils(double room, Patience patience, Function<Problem, Blend> blend) {
        this.room = room;
        this.patience = patience;
        this.blend = blend;
    }

    /**
     * @param problem whose best blend it is: of one part of the range
     * @param impossible parts of the range, each without a blend, where only the distance is in the way; else empty
     */
    record Solved(BlendAnswer answer, Problem problem, List<Problem> impossible) {}

    private record Part(double low, double high, Problem problem, BlendAnswer answer) {
        double objective() {
            return answer.match(
                    BlendAnswer.Optimal::objective, BlendAnswer.Stopped::objective, none -> Double.POSITIVE_INFINITY);
        }
    }

    static Solved solve(Problem problem, Patience patience) {
        return solve(problem, room(problem), patience, Problem::drawn);
    }

    static Solved solve(Problem problem, double room, Patience patience, Function<Problem, Blend> blend) {
        return applies(problem)
                ? new AgainstOils(room, patience, blend).search(problem)
                : new Solved(BlendSolver.solve(blend.apply(problem), patience), problem, List.of());
    }

    static boolean applies(Problem problem) {
        return problem.present().hlb().isPresent()
                && problem.present().requiredHlb().isPresent();
    }

    /** How far the HLB may be off: as wished, or as now, or near. */
    static double room(Problem problem) {
        double now = Math.abs(problem.present().hlb().orElse(0.0)
                - problem.present().requiredHlb().orElse(0.0));
        return problem.wish().bands().own().getOrDefault(Requirements.AGAINST, Math.max(NEAR, now));
    }

    /** How far the HLB of a blend is off; NaN where it has no emulsifier or no oil. */
    static double off(Problem problem, List<Double> fractions) {
        return Math.abs(mean(problem, Requirements.HLB).of(fractions)
                - mean(problem, Requirements.REQUIRED_HLB).of(fractions));
    }

    private static Mean mean(Problem problem, String name) {
        return means(problem, name).get(0);
    }

    /** The least, then the greatest. */
    private static List<Mean> means(Problem problem, String name) {
        return problem.requirements().stream()
                .filter(each -> each.name().equals(name))
                .flatMap(each -> each.mean().stream())
                .toList();
    }

    private Solved search(Problem problem) {
        List<Mean> range = means(problem, Requirements.REQUIRED_HLB);
        Part whole = part(problem, range.get(0).bound(), range.get(1).bound());
        if (whole.answer().mix().isEmpty()) {
            return new Solved(whole.answer(), problem, List.of());
        }
        PriorityQueue<Part> open = new PriorityQueue<>(Comparator.comparingDouble(Part::objective));
        open.add(whole);
        while (!open.isEmpty()) {
            Part best = open.remove();
            if (isNear(best)) {
                return new Solved(best.answer(), best.problem(), List.of());
            }
            if (best.answer() instanceof BlendAnswer.Stopped) {
                return new Solved(
                        new BlendAnswer.Stopped(
                                Optional.empty(), Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, nodes),
                        problem,
                        List.of());
            }
            double cut = cut(best);
            keep(part(problem, best.low(), cut), open);
            keep(part(problem, cut, best.high()), open);
        }
        return new Solved(new BlendAnswer.Infeasible(nodes), problem, List.copyOf(impossible));
    }

    private void keep(Part part, PriorityQueue<Part> open) {
        if (part.answer() instanceof BlendAnswer.Infeasible) {
            impossible.add(part.problem());
        } else {
            open.add(part);
        }
    }

    private boolean isNear(Part part) {
        return part.answer()
                .mix()
                .map(mix -> !(off(part.problem(), mix.fractions()) > room + WITHIN))
                .orElse(false);
    }

    private static double cut(Part part) {
        double at = mean(part.problem(), Requirements.REQUIRED_HLB)
                .of(part.answer().mix().orElseThrow().fractions());
        double width = part.high() - part.low();
        return Math.max(part.low() + END * width, Math.min(part.high() - END * width, at));
    }

    private Part part(Problem problem, double low, double high) {
        Problem narrow = narrowed(problem, low, high, room);
        BlendAnswer answer = BlendSolver.solve(blend.apply(narrow), patience);
        nodes += answer.nodes();
        return new Part(low, high, narrow, answer);
    }

    /** The same with the required HLB between two values, and the HLB no further from these than it may be. */
    static Problem narrowed(Problem problem, double low, double high, double room) {
        List<Requirement> requirements = problem.requirements().stream()
                .map(each -> each.name().equals(Requirements.REQUIRED_HLB)
                        ? narrowed(each, low, high)
                        : each.name().equals(Requirements.HLB) ? narrowed(each, low - room, high + room) : each)
                .toList();
        List<Limit> limits = requirements.stream()
                .map(each -> new Limit(each.name(), each.values(), each.min(), each.max()))
                .toList();
        return problem.with(requirements, problem.blend().withLimits(limits));
    }

    /** What already is as narrow stays itself, so that it keeps its price. */
    private static Requirement narrowed(Requirement requirement, double low, double high) {
        Mean mean = requirement.mean().orElseThrow();
        double bound = mean.isLeast() ? Math.max(mean.bound(), low) : Math.min(mean.bound(), high);
        return bound == mean.bound()
                ? requirement
                : Requirement.of(requirement.name(), new Mean(mean.masses(), mean.sums(), bound, mean.isLeast()))
                        .with(requirement.band())
                        .as(Kind.PART);
    }
}
