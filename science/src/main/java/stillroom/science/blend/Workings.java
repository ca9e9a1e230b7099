package stillroom.science.blend;

import stillroom.science.blend.DualSimplex.Outcome;

/** A blend, its relaxation and the simplex that solves it, shared by the parts of one search. */
final class Workings {
    /** Fractions below this are the simplex's rounding: an ingredient at such a fraction is absent. */
    static final double NOTHING = 1e-9;

    final Blend blend;
    final Relaxation relaxation;
    final DualSimplex simplex;
    final Dominance dominance;

    Workings(Blend blend) {
        this(blend, Dominance.of(blend));
    }

    /** @param dominance known from a wider blend, of which this one keeps every blend that matters */
    Workings(Blend blend, Dominance dominance) {
        this.blend = blend;
        this.dominance = dominance;
        this.relaxation = new Relaxation(blend);
        this.simplex = new DualSimplex(relaxation.program());
    }

    /** Solves under decisions from a basis; above the cutoff, which is in terms of the whole objective, it stops early. */
    Outcome solve(Decisions decisions, Basis from, double cutoff, int mostIterations) {
        if (!relaxation.apply(decisions)) {
            return Outcome.INFEASIBLE;
        }
        simplex.restore(from);
        return simplex.solve(cutoff - relaxation.constant(), mostIterations);
    }

    double objective() {
        return simplex.objective() + relaxation.constant();
    }

    /** Whether the fractions just solved could stand: each absent or above its least dose, and no use limit broken. */
    boolean stands(double[] fractions) {
        for (int j = 0; j < fractions.length; j++) {
            if (belowLeast(j, fractions[j])) {
                return false;
            }
        }
        return blend.useLimits().stream().noneMatch(limit -> exceeds(limit, fractions));
    }

    boolean belowLeast(int j, double fraction) {
        return fraction > NOTHING && fraction < blend.ingredients().get(j).leastIfUsed() - NOTHING;
    }

    boolean exceeds(UseLimit limit, double[] fractions) {
        int used = 0;
        for (int j : limit.of()) {
            used += fractions[j] > NOTHING ? 1 : 0;
        }
        return used > limit.atMost();
    }
}
