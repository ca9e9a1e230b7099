package stillroom.science.bench;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import stillroom.science.design.DesignAnswer;
import stillroom.science.design.DesignTask;
import stillroom.science.design.OptimalDesigns;
import stillroom.science.mixture.Blending;
import stillroom.science.mixture.LinearConstraint;
import stillroom.science.mixture.MixtureModel;
import stillroom.science.mixture.MixtureRegion;
import stillroom.science.mixture.Polytope;

/**
 * Measures the search for designs against plain exchange on the same problems: D found, and seconds of one core. Started by
 * {@code science/bench.sh design}; writes one line a problem.
 */
public final class DesignBenchmark {
    private static final double BEST_KNOWN_B = 0.006912151894;

    private DesignBenchmark() {}

    private record Problem(String name, MixtureRegion region, Blending blending, int runs) {
        MixtureModel model() {
            return MixtureModel.of(region.components(), blending);
        }
    }

    public static void main(String[] arguments) {
        System.out.println(
                "problem, terms, runs, plain D, plain s, ours D, ours s, ours/plain D, plain/ours s, stopped");
        for (Problem problem : problems()) {
            compare(problem);
        }
        System.out.println("best known for b: " + BEST_KNOWN_B);
    }

    private static void compare(Problem problem) {
        double begun = seconds();
        double plain = new PlainExchange(candidates(problem), problem.runs(), 1).best();
        double plainSeconds = seconds() - begun;
        double start = seconds();
        DesignTask task = new DesignTask(problem.region(), problem.model(), problem.runs(), DesignTask.Wishes.plain());
        DesignAnswer answer = OptimalDesigns.search(task, OptimalDesigns.USUAL_EFFORT, () -> false);
        double ourSeconds = seconds() - start;
        double ours = answer.match(found -> found.design().d(), refused -> 0.0);
        boolean stopped = answer.match(found -> found.design().effort().stopped(), refused -> true);
        System.out.printf(
                "%s, %d, %d, %.12f, %.3f, %.12f, %.3f, %.5f, %.2f, %s%n",
                problem.name(),
                problem.model().terms().size(),
                problem.runs(),
                plain,
                plainSeconds,
                ours,
                ourSeconds,
                ours / plain,
                plainSeconds / ourSeconds,
                stopped);
    }

    private static double seconds() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9;
    }

    /** Corners, middles of edges and two-dimensional faces, the overall centroid: what one would hand to an exchange. */
    private static List<double[]> candidates(Problem problem) {
        Polytope body = problem.region().polytope();
        List<double[]> points = new ArrayList<>(body.vertices());
        points.addAll(body.edgeMidpoints());
        points.addAll(body.planeCentroids().size() < 1500 ? body.planeCentroids() : body.facetCentroids());
        points.add(body.centroid());
        return points.stream()
                .map(point -> problem.model().at(problem.region().pseudo(point)))
                .toList();
    }

    private static List<Problem> problems() {
        List<Problem> problems = new ArrayList<>();
        problems.add(new Problem("a", MixtureRegion.simplex(3), Blending.QUADRATIC, 10));
        problems.add(new Problem(
                "b",
                new MixtureRegion(List.of(.1, .05, .1, 0.0), List.of(.6, .5, .7, .3), List.of()),
                Blending.QUADRATIC,
                15));
        problems.add(new Problem(
                "eight-bounded",
                new MixtureRegion(
                        List.of(.10, .05, 0.0, 0.0, .10, .05, 0.0, 0.0),
                        List.of(.45, .50, .10, .40, .60, .20, .05, .05),
                        List.of()),
                Blending.QUADRATIC,
                45));
        for (int q = 4; q <= 8; q++) {
            for (int variant = 0; variant < 3; variant++) {
                problems.add(tight(q, variant));
            }
        }
        return problems;
    }

    /** Tight bounds about a random mixture, and constraints that cut them. */
    private static Problem tight(int q, int variant) {
        SplittableRandom random = new SplittableRandom(100L * q + variant);
        double[] centre = random.doubles(q, 0.5, 1.5).toArray();
        double sum = java.util.Arrays.stream(centre).sum();
        List<Double> lower = new ArrayList<>();
        List<Double> upper = new ArrayList<>();
        for (int i = 0; i < q; i++) {
            centre[i] /= sum;
            lower.add(Math.max(0, centre[i] - random.nextDouble(0.02, 0.15)));
            upper.add(Math.min(1, centre[i] + random.nextDouble(0.02, 0.25)));
        }
        List<LinearConstraint> constraints = new ArrayList<>();
        for (int k = 0; k < variant; k++) {
            List<Double> coefficients = random.doubles(q, -1, 1).boxed().toList();
            double here = new LinearConstraint(coefficients, 0, 0).at(centre);
            constraints.add(new LinearConstraint(coefficients, here - 0.05, here + 0.04));
        }
        MixtureRegion region = new MixtureRegion(lower, upper, constraints);
        Blending blending = variant == 1 && q <= 5 ? Blending.SPECIAL_CUBIC : Blending.QUADRATIC;
        int terms = MixtureModel.of(q, blending).terms().size();
        return new Problem("tight-" + q + "-" + variant, region, blending, terms + random.nextInt(0, terms / 2));
    }
}
