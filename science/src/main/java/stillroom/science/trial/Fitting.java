package stillroom.science.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import stillroom.science.mixture.MixtureModel;
import stillroom.science.mixture.MixtureRegion;
import stillroom.science.mixture.Term;
import stillroom.science.regression.LeastSquares;
import stillroom.science.regression.LinearFit;
import stillroom.science.regression.Observation;

/** Fits Scheffé models to trials as they were weighed, and says plainly what is doubtful about the fit. */
public final class Fitting {
    /** Runs nearer to each other than this repeat one setting [mass fraction, coded process variable]. */
    private static final double SAME = 0.002;

    private Fitting() {}

    /** How terms are left out. */
    public enum Selection {
        /** All terms stay. */
        NONE,
        /** The least significant one goes as long as its p is above 0.1. */
        BACKWARD,
        /** The one goes whose absence lowers Akaike's corrected criterion most, as long as one does. */
        AKAIKE
    }

    public static FitAnswer fit(MixtureRegion region, MixtureModel model, List<TrialRun> runs, Selection selection) {
        Taken taken = Taken.of(runs);
        List<TrialRun> used = taken.from(runs);
        int blocks = Math.max(1, taken.days().size());
        List<String> reasons = reasonsAgainst(model, used, blocks);
        if (!reasons.isEmpty()) {
            return new FitAnswer.NotYet(reasons);
        }
        try {
            Selected selected = selected(model, used, blocks, selection);
            List<String> said = new ArrayList<>(missing(runs));
            said.addAll(selected.said());
            said.addAll(doubts(selected.fit(), taken.runs()));
            return new FitAnswer.Fitted(new MixtureFit(region, selected.model(), taken, selected.fit(), said));
        } catch (IllegalArgumentException dependent) {
            return new FitAnswer.NotYet(List.of("The mixtures as weighed do not tell the "
                    + model.terms().size() + " terms of this model apart. A simpler model, or further runs."));
        }
    }

    private static List<String> reasonsAgainst(MixtureModel model, List<TrialRun> used, int blocks) {
        List<String> reasons = new ArrayList<>();
        int terms = model.terms().size() + blocks - 1;
        if (used.size() < terms) {
            reasons.add(used.size() + " measured runs cannot tell " + terms + " terms apart: " + (terms - used.size())
                    + " more, or a simpler model.");
        }
        if (used.size() > 1 && used.stream().map(TrialRun::response).distinct().count() == 1) {
            reasons.add("All " + used.size() + " responses are the same: there is nothing to explain.");
        }
        return reasons;
    }

    private static List<String> missing(List<TrialRun> runs) {
        List<String> without = IntStream.range(0, runs.size())
                .filter(i -> runs.get(i).response().isEmpty())
                .mapToObj(i -> String.valueOf(i + 1))
                .toList();
        return without.isEmpty()
                ? List.of()
                : List.of("Not measured, and left out of the fit: run " + String.join(", ", without) + ".");
    }

    private record Selected(MixtureModel model, LinearFit fit, List<String> said) {}

    private static Selected selected(MixtureModel whole, List<TrialRun> used, int blocks, Selection selection) {
        MixtureModel model = whole;
        LinearFit fit = LeastSquares.fit(rows(model, used, blocks));
        List<String> said = new ArrayList<>();
        while (selection != Selection.NONE) {
            int out = selection == Selection.BACKWARD
                    ? leastSignificant(model, fit)
                    : leastUseful(model, fit, used, blocks);
            if (out < 0) {
                break;
            }
            said.add("Left out as not needed: " + model.terms().get(out).name() + ".");
            model = without(model, out);
            fit = LeastSquares.fit(rows(model, used, blocks));
        }
        return new Selected(model, fit, said);
    }

    /** Linear blending terms stay, and any term that is part of a larger one kept: the model keeps its hierarchy. */
    private static boolean mayGo(MixtureModel model, int index) {
        Term term = model.terms().get(index);
        boolean blendsAlone = term.components().size() == 1 && term.processes().isEmpty();
        return !blendsAlone && model.terms().stream().noneMatch(other -> other.above(term));
    }

    private static int leastSignificant(MixtureModel model, LinearFit fit) {
        int out = -1;
        double most = 0.1;
        for (int k = 0; k < model.terms().size(); k++) {
            double p = fit.coefficients().get(k).p();
            if (fit.errorDegrees() > 0 && p > most && mayGo(model, k)) {
                most = p;
                out = k;
            }
        }
        return out;
    }

    private static int leastUseful(MixtureModel model, LinearFit fit, List<TrialRun> used, int blocks) {
        int out = -1;
        double least = fit.correctedAkaike();
        for (int k = 0; k < model.terms().size(); k++) {
            if (mayGo(model, k)) {
                double without =
                        LeastSquares.fit(rows(without(model, k), used, blocks)).correctedAkaike();
                if (without < least
                        || (out < 0 && Double.isInfinite(least) && model.terms().size() > model.components())) {
                    least = without;
                    out = k;
                }
            }
        }
        return out;
    }

    private static MixtureModel without(MixtureModel model, int index) {
        List<Term> terms = new ArrayList<>(model.terms());
        terms.remove(index);
        return new MixtureModel(model.components(), model.processes(), terms);
    }

    private static List<Observation> rows(MixtureModel model, List<TrialRun> used, int blocks) {
        List<Observation> rows = new ArrayList<>();
        int[] groups = groups(used);
        int p = model.terms().size();
        for (int i = 0; i < used.size(); i++) {
            TrialRun run = used.get(i);
            double[] row = Arrays.copyOf(model.at(run.point()), p + blocks - 1);
            for (int b = 0; b < blocks - 1; b++) {
                row[p + b] = run.block() == blocks ? -1 : run.block() == b + 1 ? 1 : 0;
            }
            rows.add(new Observation(
                    Arrays.stream(row).boxed().toList(), run.response().orElseThrow(), groups[i]));
        }
        return rows;
    }

    /** Runs of one block that repeat each other, as near as a balance lets them. */
    private static int[] groups(List<TrialRun> used) {
        int[] groups = new int[used.size()];
        for (int i = 0; i < groups.length; i++) {
            groups[i] = i;
            for (int k = 0; k < i; k++) {
                if (used.get(k).block() == used.get(i).block()
                        && same(used.get(k).point(), used.get(i).point())) {
                    groups[i] = groups[k];
                    break;
                }
            }
        }
        return groups;
    }

    private static boolean same(double[] a, double[] b) {
        return IntStream.range(0, a.length).allMatch(i -> Math.abs(a[i] - b[i]) < SAME);
    }

    private static List<String> doubts(LinearFit fit, List<Integer> measured) {
        List<String> said = new ArrayList<>();
        if (fit.exact()) {
            said.add(
                    "The fit is exact: it meets every run to within rounding, as measured beakers hardly do. Nothing here"
                            + " tells how far they scatter.");
            return said;
        }
        List<Double> studentised = fit.studentisedResiduals();
        for (int i = 0; i < studentised.size(); i++) {
            if (Math.abs(studentised.get(i)) > fit.outlierLimit()) {
                said.add(String.format(
                        Locale.ROOT,
                        "Run %d does not fit the others (studentised residual %.1f, limit %.1f): look at its notes before"
                                + " trusting it. It is kept in the fit.",
                        measured.get(i) + 1,
                        studentised.get(i),
                        fit.outlierLimit()));
            }
        }
        if (fit.errorDegrees() == 0) {
            said.add("As many terms as runs: the fit goes through every point, and nothing tells how sure it is.");
        } else if (fit.lackOfFit().p() < 0.05) {
            said.add(String.format(
                    Locale.ROOT,
                    "The model misses more than the repeats scatter (lack of fit, p = %.3f): a higher model or a narrower"
                            + " region.",
                    fit.lackOfFit().p()));
        }
        if (fit.errorDegrees() > 0 && fit.regression().p() > 0.05) {
            said.add("The responses differ hardly more than by chance (p = "
                    + String.format(Locale.ROOT, "%.2f", fit.regression().p()) + ").");
        }
        if (fit.errorDegrees() > 0 && fit.predictedRSquared() < 0) {
            said.add("It predicts left-out runs worse than their mean does (predicted R² below 0).");
        }
        return said;
    }
}
