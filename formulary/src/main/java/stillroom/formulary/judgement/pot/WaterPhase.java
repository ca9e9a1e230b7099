package stillroom.formulary.judgement.pot;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import stillroom.formulary.constants.AcidConstants;
import stillroom.science.equilibrium.Equilibrium;
import stillroom.science.equilibrium.EquilibriumSolver;
import stillroom.science.equilibrium.Solution;
import stillroom.science.equilibrium.WaterModel;

/**
 * The water of a pot as something to be solved: what dissolves, and what gathers.
 *
 * @param water per mass of product, above 0
 */
record WaterPhase(Dissolved dissolved, List<Gathered> gathered, double water, AcidConstants acids) {
    private static final EquilibriumSolver SOLVER = new EquilibriumSolver(WaterModel.STANDARD);

    /** With everything at the middle of its range. */
    Equilibrium middle() {
        Solution solution = plain();
        for (Gathered one : gathered) {
            solution = one.middle(solution, water);
        }
        return SOLVER.solve(solution);
    }

    private Solution plain() {
        return dissolved.solution(water, acids, part -> part.share().nominal());
    }

    /** How far the ranges of amounts, compositions and effective constants move the pH, one for each that does. */
    List<Spread> spreads(double middle) {
        List<Spread> spreads = new ArrayList<>();
        for (Dissolved.Part ranged : dissolved.parts()) {
            if (!ranged.share().amount().isExact()) {
                spreads.add(Spread.between(
                        "the range of " + ranged.share().name(),
                        withAmount(ranged, ranged.share().amount().lower()) - middle,
                        withAmount(ranged, ranged.share().amount().upper()) - middle));
            }
        }
        for (Gathered one : gathered) {
            String name = one.share().name();
            spreads.add(Spread.between(
                    "the range of the constants of " + name,
                    with(one, solution -> one.atConstants(solution, water, 0)) - middle,
                    with(one, solution -> one.atConstants(solution, water, 1)) - middle));
            if (one.isRanged()) {
                spreads.add(Spread.between(
                        "the range of " + name,
                        with(one, solution -> one.atLeast(solution, water)) - middle,
                        with(one, solution -> one.atMost(solution, water)) - middle));
            }
        }
        return spreads;
    }

    private double withAmount(Dissolved.Part ranged, double amount) {
        Solution solution = dissolved.solution(
                water, acids, part -> part == ranged ? amount : part.share().nominal());
        for (Gathered one : gathered) {
            solution = one.middle(solution, water);
        }
        return SOLVER.solve(solution).pH();
    }

    private double with(Gathered moved, UnaryOperator<Solution> add) {
        Solution solution = plain();
        for (Gathered one : gathered) {
            solution = one == moved ? add.apply(solution) : one.middle(solution, water);
        }
        return SOLVER.solve(solution).pH();
    }
}
