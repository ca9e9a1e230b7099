package stillroom.formulary.judgement.pot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.constants.AcidConstant;
import stillroom.formulary.constants.AcidConstants;
import stillroom.formulary.constants.EffectiveConstant;
import stillroom.formulary.evaluation.Composition;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Outcome;
import stillroom.science.equilibrium.Equilibrium;

/**
 * The pH to expect, from all acids, bases and salts in the water of the pot, or why it is not known.
 *
 * <p>Molality is per kilogram of water in the pot. Acid that dissolves in oil or in micelles is not taken off. The
 * interval holds the model's own error, the ranges of amounts and compositions, unseen traces of acid or base, the pull of
 * materials of which only the own pH is known (see {@link OwnPhPull}), the ranges of effective constants of surfactants in
 * micelles and of polyacids (see {@link EffectiveConstant}), and, above 10 % of glycols, glycerin or alcohol in the water
 * phase, an allowance for shifted constants (0.02 pH per further percent; an estimate, no source). What widens it most is
 * named; where effective constants take part, an interval wider than {@value #WIDEST} is no figure any more.
 */
record Acidity(
        List<Item> items,
        List<Share> shares,
        Composition composition,
        AcidConstants acids,
        Map<String, EffectiveConstant> effective) {
    private static final double WATER_PHASE = 0.03;
    private static final double WEAKEST_BUFFER_MOL_PER_KG = 3e-4;
    /** Acid or base that raw materials and the air bring along unseen; an estimate, no source. */
    private static final double TRACES_MOL_PER_KG = 5e-4;

    private static final double WORTH_NAMING = 0.1;
    private static final double WIDEST = 3;
    private static final double SUPERSATURATION = 1.5;
    private static final double COSOLVENT_FREE = 0.10;
    private static final double COSOLVENT_PH_PER_FRACTION = 2.0;

    Outcome<Figure> expected() {
        double water = Pot.sum(shares.stream().filter(Share::isWater).toList());
        if (water < WATER_PHASE) {
            return Outcome.notKnown("no pH: there is no water phase");
        }
        Dissolved dissolved = Dissolved.of(shares, acids);
        List<Gathered> gathered = Gathered.of(items, shares, effective);
        AcidityGaps gaps = new AcidityGaps(items, shares, composition, dissolved, gathered);
        Optional<String> gap = gaps.first();
        if (gap.isPresent()) {
            return Outcome.notKnown(gap.get());
        }
        WaterPhase phase = new WaterPhase(dissolved, gathered, water, acids);
        Equilibrium middle = phase.middle();
        Optional<String> refusal = refusal(dissolved, middle);
        if (refusal.isPresent()) {
            return Outcome.notKnown(refusal.get());
        }
        List<Spread> spreads = new ArrayList<>(phase.spreads(middle.pH()));
        OwnPhPull pull = new OwnPhPull(middle.pH(), middle.bufferCapacityMolPerKg() * water);
        items.stream()
                .filter(item -> !gaps.isExplained(item))
                .forEach(item -> pull.of(item).ifPresent(spreads::add));
        Figure figure = figure(middle, spreads, water, gathered);
        return gathered.isEmpty() ? Outcome.known(figure) : narrowEnough(figure, spreads);
    }

    private static Optional<String> refusal(Dissolved dissolved, Equilibrium middle) {
        if (!middle.inRange()) {
            return Optional.of("out of the model's range: "
                    + (middle.converged()
                            ? Words.list(middle.exceeded().stream()
                                    .map(limit -> limit.sentence())
                                    .toList())
                            : "no equilibrium was found"));
        }
        if (middle.bufferCapacityMolPerKg() < WEAKEST_BUFFER_MOL_PER_KG) {
            return Optional.of("so weakly buffered that traces and the air decide");
        }
        return undissolved(dissolved, middle).map(solid -> solid + " does not all dissolve in the water");
    }

    private static Outcome<Figure> narrowEnough(Figure figure, List<Spread> spreads) {
        if (figure.high() - figure.low() <= WIDEST) {
            return Outcome.known(figure);
        }
        String cause = spreads.stream()
                .max(Comparator.comparingDouble(Spread::width))
                .map(Spread::cause)
                .orElse("the model's own error");
        return Outcome.notKnown("anywhere from " + Words.tenths(figure.low()) + " to " + Words.tenths(figure.high())
                + ", above all by " + cause);
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

    private Figure figure(Equilibrium middle, List<Spread> spreads, double water, List<Gathered> gathered) {
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
                        + " mol/kg; acid lost to oil and micelles not taken off" + effectively(gathered)
                        + dominant(spreads),
                List.of("constants: the table of acids and bases"));
    }

    private static String effectively(List<Gathered> gathered) {
        return gathered.isEmpty()
                ? ""
                : "; "
                        + Words.list(
                                gathered.stream().map(one -> one.share().name()).toList())
                        + " by effective constants, over their whole range";
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
