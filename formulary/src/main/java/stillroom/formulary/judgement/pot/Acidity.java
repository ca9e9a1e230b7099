package stillroom.formulary.judgement.pot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.constants.AcidConstant;
import stillroom.formulary.constants.AcidConstants;
import stillroom.formulary.evaluation.Composition;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.science.equilibrium.Equilibrium;
import stillroom.science.equilibrium.EquilibriumSolver;
import stillroom.science.equilibrium.WaterModel;

/**
 * The pH to expect, from all acids, bases and salts in the water of the pot, or why it is not known.
 *
 * <p>Molality is per kilogram of water in the pot. Acid that dissolves in oil or in micelles is not taken off. The
 * interval holds the model's own error, the ranges of amounts and compositions, unseen traces of acid or base, the pull of
 * materials of which only the own pH is known (see {@link OwnPhPull}), and, above 10 % of glycols, glycerin or alcohol in
 * the water phase, an allowance for shifted constants (0.02 pH per further percent; an estimate, no source). What widens
 * it most is named.
 */
record Acidity(List<Item> items, List<Share> shares, Composition composition, AcidConstants acids) {
    private static final EquilibriumSolver SOLVER = new EquilibriumSolver(WaterModel.STANDARD);
    private static final double WATER_PHASE = 0.03;
    private static final double UNKNOWN_ALLOWED = 0.002;
    private static final double WEAKEST_BUFFER_MOL_PER_KG = 3e-4;
    /** Acid or base that raw materials and the air bring along unseen; an estimate, no source. */
    private static final double TRACES_MOL_PER_KG = 5e-4;

    private static final double WORTH_NAMING = 0.1;
    private static final double SUPERSATURATION = 1.5;
    private static final double COSOLVENT_FREE = 0.10;
    private static final double COSOLVENT_PH_PER_FRACTION = 2.0;

    Outcome<Figure> expected() {
        double water = Pot.sum(shares.stream().filter(Share::isWater).toList());
        if (water < WATER_PHASE) {
            return Outcome.notKnown("no pH: there is no water phase");
        }
        Dissolved dissolved = Dissolved.of(shares, acids);
        Optional<String> gap = gap(dissolved);
        if (gap.isPresent()) {
            return Outcome.notKnown(gap.get());
        }
        Equilibrium middle = SOLVER.solve(
                dissolved.solution(water, acids, part -> part.share().nominal()));
        if (!middle.inRange()) {
            return Outcome.notKnown("out of the model's range: "
                    + (middle.converged()
                            ? Words.list(middle.exceeded().stream()
                                    .map(limit -> limit.sentence())
                                    .toList())
                            : "no equilibrium was found"));
        }
        if (middle.bufferCapacityMolPerKg() < WEAKEST_BUFFER_MOL_PER_KG) {
            return Outcome.notKnown("so weakly buffered that traces and the air decide");
        }
        Optional<String> solid = undissolved(dissolved, middle);
        if (solid.isPresent()) {
            return Outcome.notKnown(solid.get() + " does not all dissolve in the water");
        }
        return Outcome.known(figure(middle, spreads(dissolved, water, middle), water));
    }

    /** An acid whose free form lies well above its solubility; a little above may stay dissolved for a while. */
    private static Optional<String> undissolved(Dissolved dissolved, Equilibrium solved) {
        return dissolved.parts().stream()
                .map(Dissolved.Part::acid)
                .distinct()
                .filter(acid -> acid.freeAcidSolubilityGramsPerKg().isPresent())
                .filter(acid -> gramsPerKgUncharged(acid, solved)
                        > SUPERSATURATION * acid.freeAcidSolubilityGramsPerKg().orElseThrow())
                .map(AcidConstant::name)
                .findFirst();
    }

    private static double gramsPerKgUncharged(AcidConstant acid, Equilibrium solved) {
        return solved.species().stream()
                .filter(species ->
                        species.name().equals(acid.key()) && species.protonsLost() == acid.protonsLostWhenUncharged())
                .mapToDouble(species -> species.molPerKg() * acid.gramsPerMol())
                .sum();
    }

    /** What would make the figure a guess. */
    private Optional<String> gap(Dissolved dissolved) {
        if (composition.unknownFraction() > UNKNOWN_ALLOWED) {
            return Optional.of("no composition for " + Words.list(composition.unknown()));
        }
        if (dissolved.parts().isEmpty()) {
            return Optional.of("nothing in it with known constants sets the pH");
        }
        List<String> soaps = new ArrayList<>();
        dissolved.parts().stream()
                .filter(part -> part.acid().formsMicelles())
                .forEach(part -> soaps.add(part.share().name()));
        if (!soaps.isEmpty()) {
            return Optional.of(Words.list(soaps) + " gathers into micelles, which the model leaves out");
        }
        List<Share> swelling =
                shares.stream().filter(share -> share.is("carbomer-like")).toList();
        if (!swelling.isEmpty()) {
            boolean one = swelling.size() == 1;
            return Optional.of(Words.list(Pot.names(swelling))
                    + (one ? " itself takes" : " themselves take")
                    + " up acid or base, and how much stands on no card");
        }
        if (items.stream()
                        .anyMatch(item ->
                                item.is(Family.BASE) && item.portion().share().upper() > 0)
                && shares.stream().anyMatch(share -> share.is("fatty-acid") && share.isIngredient())) {
            return Optional.of("base and fatty acid make soap, which the model leaves out");
        }
        List<String> strangers = items.stream()
                .filter(item -> bringsUnknownAcidity(item, dissolved))
                .map(Item::name)
                .distinct()
                .toList();
        return strangers.isEmpty()
                ? Optional.empty()
                : Optional.of(Words.list(strangers)
                        + (strangers.size() == 1 ? " is" : " are")
                        + " acid or alkaline as supplied, by how much is not on the card");
    }

    /** A card far from neutral none of whose parts has constants, in more than a trace. */
    private static boolean bringsUnknownAcidity(Item item, Dissolved dissolved) {
        // Weak-acid surfactants buffer although they are sold near neutral, so their shelf is held more tightly.
        boolean far = item.material()
                .flatMap(Material::ownPh)
                .map(ph -> item.is(Family.SURFACTANT) ? ph.high() > 9 : ph.low() > 9.5 || ph.high() < 3.5)
                .orElse(false);
        boolean explained = dissolved.parts().stream()
                .anyMatch(part -> part.share().lines().contains(item.portion().lineId()));
        return far && !explained && item.portion().share().nominal() > 0.002;
    }

    /** How far ranges of amounts, compositions and own pH move the pH, one for each that does. */
    private List<Spread> spreads(Dissolved dissolved, double water, Equilibrium middle) {
        List<Spread> spreads = new ArrayList<>();
        for (Dissolved.Part ranged : dissolved.parts()) {
            if (!ranged.share().amount().isExact()) {
                double atLower =
                        moved(dissolved, water, ranged, ranged.share().amount().lower()) - middle.pH();
                double atUpper =
                        moved(dissolved, water, ranged, ranged.share().amount().upper()) - middle.pH();
                spreads.add(Spread.between("the range of " + ranged.share().name(), atLower, atUpper));
            }
        }
        OwnPhPull pull = new OwnPhPull(middle.pH(), middle.bufferCapacityMolPerKg() * water);
        items.stream()
                .filter(item -> dissolved.parts().stream()
                        .noneMatch(part ->
                                part.share().lines().contains(item.portion().lineId())))
                .forEach(item -> pull.of(item).ifPresent(spreads::add));
        return spreads;
    }

    private double moved(Dissolved dissolved, double water, Dissolved.Part ranged, double amount) {
        return SOLVER.solve(dissolved.solution(
                        water,
                        acids,
                        part -> part == ranged ? amount : part.share().nominal()))
                .pH();
    }

    private Figure figure(Equilibrium middle, List<Spread> spreads, double water) {
        double cosolvent = Pot.sum(shares.stream()
                .filter(share -> share.is("humectant") || share.is("alcohol"))
                .toList());
        double beyond = Math.max(0, cosolvent / (cosolvent + water) - COSOLVENT_FREE);
        double traces = TRACES_MOL_PER_KG / middle.bufferCapacityMolPerKg();
        double half = middle.pHHalfWidth() + COSOLVENT_PH_PER_FRACTION * beyond + traces;
        double down = spreads.stream().mapToDouble(Spread::down).sum();
        double up = spreads.stream().mapToDouble(Spread::up).sum();
        return new Figure(
                "pH",
                Math.max(0, middle.pH() - half + down),
                middle.pH(),
                Math.min(14, middle.pH() + half + up),
                "pH",
                "acid-base equilibrium at 25 °C with Davies activities, ionic strength "
                        + Words.figure(middle.ionicStrengthMolPerKg())
                        + " mol/kg; acid lost to oil and micelles not taken off" + dominant(spreads),
                List.of("constants: the table of acids and bases"));
    }

    /** Who widens the interval most, where that is more than a tenth of a pH. */
    private static String dominant(List<Spread> spreads) {
        return spreads.stream()
                .max(Comparator.comparingDouble(Spread::width))
                .filter(widest -> widest.width() >= WORTH_NAMING)
                .map(widest -> "; most of the interval is " + widest.cause() + ", " + Words.figure(widest.width())
                        + " pH wide")
                .orElse("");
    }
}
