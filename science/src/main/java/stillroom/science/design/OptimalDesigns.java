package stillroom.science.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/** Exact optimal designs for mixtures, from a fixed seed. */
public final class OptimalDesigns {
    /** Work that settles usual problems, and ends hard ones well within a second of one core [multiplications]. */
    public static final long USUAL_EFFORT = 400_000_000;

    private static final double SHARE_OF_THE_SEARCH = 0.85;

    private static final double MERGED = 1e-6;

    private OptimalDesigns() {}

    /**
     * The best design found.
     *
     * @param effort after how much work to stop [multiplications]; the same effort and seed give the same design
     * @param stop for emergencies, asked often; once true, the best so far is the answer
     */
    public static DesignAnswer search(DesignTask task, long effort, BooleanSupplier stop) {
        List<String> wrong = task.problems();
        if (!wrong.isEmpty()) {
            return new DesignAnswer.Refused(wrong);
        }
        DesignSpace space = new DesignSpace(task.region().polytope(), task.model());
        if (!space.tellsTermsApart()) {
            return new DesignAnswer.Refused(
                    List.of(
                            "The region is too narrow for this model: within it, some of the "
                                    + task.model().terms().size()
                                    + " terms cannot be told apart. Fixed components belong outside the design; or ask for a simpler model."));
        }
        Moments moments =
                Moments.over(space, task.model().processes(), task.wishes().seed());
        return search(task, space, moments, effort, stop);
    }

    /** How good runs chosen otherwise are; refused if they cannot tell the terms apart. */
    public static DesignAnswer judge(DesignTask task, List<Run> runs) {
        DesignTask.Wishes wishes = new DesignTask.Wishes(
                task.wishes().criterion(), 1, 0, List.of(), task.wishes().seed());
        DesignTask asked = new DesignTask(task.region(), task.model(), runs.size(), wishes);
        DesignSpace space = new DesignSpace(task.region().polytope(), task.model());
        if (!asked.problems().isEmpty() || !space.tellsTermsApart()) {
            return new DesignAnswer.Refused(
                    List.of(runs.size() + " runs of this design cannot tell the terms of the model apart."));
        }
        Moments moments = Moments.over(space, task.model().processes(), wishes.seed());
        Ground ground = new Ground(asked, space, moments.matrix());
        MixtureDesign design = judged(
                asked,
                ground,
                moments,
                runs.stream().map(Run::point).toList(),
                new MixtureDesign.Effort(0, 0, 0, false),
                new Meter(USUAL_EFFORT / 4, () -> false));
        return design.d() > 0
                ? new DesignAnswer.Found(design)
                : new DesignAnswer.Refused(List.of("This design cannot tell the terms of the model apart."));
    }

    private static DesignAnswer search(
            DesignTask task, DesignSpace space, Moments moments, long effort, BooleanSupplier stop) {
        Meter meter = new Meter((long) (SHARE_OF_THE_SEARCH * effort), stop);
        long budget = (long) (0.9 * meter.limit() / (task.wishes().repeats() > 0 ? 2 : 1));
        Search search = searched(new Ground(task, space, moments.matrix()), task, budget, meter);
        List<double[]> points = Merging.merged(search.best(), MERGED);
        int missing = task.wishes().repeats() - repeats(points);
        Ground ground = new Ground(task, space, moments.matrix());
        if (missing > 0 && !search.best().isEmpty()) {
            DesignTask fewer = new DesignTask(
                    task.region(), task.model(), task.runs() - task.wishes().repeats(), task.wishes());
            search = searched(new Ground(fewer, space, moments.matrix()), task, budget, meter);
            points = Repeating.extended(ground, Merging.merged(search.best(), MERGED));
        }
        if (points.isEmpty()) {
            return new DesignAnswer.Refused(List.of("No design was found in which the terms can be told apart."));
        }
        return new DesignAnswer.Found(
                judged(task, ground, moments, points, search.effort(), new Meter(effort - meter.limit(), stop)));
    }

    private static Search searched(Ground ground, DesignTask task, long budget, Meter meter) {
        Search search = new Search(ground, task.wishes().seed(), budget, meter);
        search.run();
        return search;
    }

    private static MixtureDesign judged(
            DesignTask task,
            Ground ground,
            Moments moments,
            List<double[]> points,
            MixtureDesign.Effort effort,
            Meter meter) {
        List<Run> runs = new ArrayList<>(task.wishes().made());
        for (int i = 0; i < points.size(); i++) {
            runs.add(Run.of(points.get(i), ground.space().components(), ground.blockOf(i) + 1));
        }
        runs.sort(Comparator.comparingInt(Run::block));
        Quality quality = new Quality(ground, runs);
        Optional<Double> ceiling = task.wishes().criterion() == Criterion.D
                ? Optional.of(ceiling(task, ground.space(), runs, meter)).filter(Double::isFinite)
                : Optional.empty();
        return new MixtureDesign(
                runs,
                quality.d(),
                ceiling,
                quality.meanVariance(),
                moments.exact(),
                floor(task, ground.space(), moments, runs, meter),
                quality.blockEfficiency(),
                repeats(runs.stream().map(Run::point).toList()),
                effort);
    }

    /** Of the mean variance; runs already made and blocks can only raise it. */
    private static Optional<Double> floor(
            DesignTask task, DesignSpace space, Moments moments, List<Run> runs, Meter meter) {
        if (task.wishes().criterion() != Criterion.I) {
            return Optional.empty();
        }
        Shortlist all = new Shortlist(space, new SplittableRandom(task.wishes().seed()), meter);
        double floor = all.floor(runs.stream().map(Run::point).toList(), moments.matrix());
        return Optional.of(floor / runs.size()).filter(value -> value > 0 && Double.isFinite(value));
    }

    private static double ceiling(DesignTask task, DesignSpace space, List<Run> runs, Meter meter) {
        List<double[]> points = runs.stream().map(Run::point).toList();
        Shortlist all = new Shortlist(space, new SplittableRandom(task.wishes().seed()), meter);
        return Math.exp(all.ceiling(points) + space.logTurn() / space.terms());
    }

    private static int repeats(List<double[]> points) {
        List<double[]> different = new ArrayList<>();
        for (double[] point : points) {
            if (different.stream().noneMatch(other -> Candidates.same(other, point))) {
                different.add(point);
            }
        }
        return points.size() - different.size();
    }
}
