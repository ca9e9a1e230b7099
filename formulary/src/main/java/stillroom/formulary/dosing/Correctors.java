package stillroom.formulary.dosing;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.constants.PhConstants;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.evaluation.Portion;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.judgement.pot.WaterChemistry;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Percent;
import stillroom.science.dosing.Corrector;
import stillroom.science.equilibrium.Component;
import stillroom.science.equilibrium.EquilibriumSolver;
import stillroom.science.equilibrium.Solution;
import stillroom.science.equilibrium.StrongIon;
import stillroom.science.equilibrium.WaterModel;

/** Acids and bases as they stand on the shelf, with the strength of their cards: a premix with its own water like any other. */
public final class Correctors {
    private static final double LEAST_MOVE = 0.5;

    private final MaterialBook book;
    private final PhConstants constants;

    public Correctors(MaterialBook book, PhConstants constants) {
        this.book = book;
        this.constants = constants;
    }

    /** A corrector with how sure its strength is, half range over nominal [-]. */
    public record Known(Corrector corrector, double strengthSpread) {}

    /** The corrector that a card is, or why its strength is not known. */
    public Outcome<Known> of(String materialKey) {
        Optional<Material> card = book.material(materialKey);
        if (card.isEmpty()) {
            return Outcome.notKnown("there is no card for " + materialKey);
        }
        String name = card.get().name();
        if (card.get().composition().isEmpty()) {
            return Outcome.notKnown(
                    name + " has no strength: its card has no composition; enter how much acid or base it holds");
        }
        WaterChemistry held = WaterChemistry.of(alone(materialKey), book, constants);
        if (held.isInert() || !moves(held)) {
            return Outcome.notKnown(
                    name
                            + " has no strength: nothing in it with known constants is acid or alkaline; look at its composition");
        }
        return Outcome.known(new Known(
                new Corrector(name, held.components(), held.ions(), held.waterFraction()), held.strengthSpread()));
    }

    /** The corrector weighed into water, so that it makes up a percentage of the whole. */
    public static Corrector diluted(Corrector corrector, Percent percent) {
        return percent.equals(Percent.HUNDRED) ? corrector : corrector.dilutedTo(percent.massFraction());
    }

    private static Subject alone(String materialKey) {
        return new Subject(
                Brief.of(ProductType.OTHER_RINSE_OFF),
                List.of(new Portion("corrector", "", materialKey, MassFraction.exactly(1))),
                List.of(),
                0,
                Optional.empty());
    }

    /** A hundredth of it in water moves the pH. */
    private static boolean moves(WaterChemistry held) {
        List<Component> few = held.components().stream()
                .map(one -> new Component(one.system(), one.molPerKg() / 100))
                .toList();
        List<StrongIon> fewIons = held.ions().stream()
                .map(one -> new StrongIon(one.name(), one.charge(), one.molPerKg() / 100))
                .toList();
        Solution solution = new Solution(few, fewIons, 25, Optional.empty());
        double pH = new EquilibriumSolver(WaterModel.STANDARD).solve(solution).pH();
        return Math.abs(pH - 7) >= LEAST_MOVE;
    }
}
