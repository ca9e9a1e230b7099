package stillroom.science.blend;

/** Solves blending problems to a proven optimum. Stateless. */
public final class BlendSolver {
    private BlendSolver() {}

    /** Answers with the optimum, or with what is known once patience is over. */
    public static BlendAnswer solve(Blend blend, Patience patience) {
        Searched searched = new Narrowing(blend, patience).run();
        double objective = searched.best().map(Incumbent.Found::objective).orElse(Double.POSITIVE_INFINITY);
        if (searched.best().isPresent() && searched.bound() >= objective - gap(objective)) {
            return new BlendAnswer.Optimal(
                    searched.best().get().mix(), objective, Math.min(objective, searched.bound()), searched.nodes());
        }
        if (searched.best().isEmpty() && searched.bound() == Double.POSITIVE_INFINITY) {
            return new BlendAnswer.Infeasible(searched.nodes());
        }
        return new BlendAnswer.Stopped(
                searched.best().map(Incumbent.Found::mix), objective, searched.bound(), searched.nodes());
    }

    private static double gap(double objective) {
        return Incumbent.PROOF_GAP * Math.max(1, Math.abs(objective));
    }
}
