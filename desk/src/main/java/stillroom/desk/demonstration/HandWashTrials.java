package stillroom.desk.demonstration;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillroom.desk.shell.Desk;
import stillroom.desk.trials.Making;
import stillroom.desk.trials.TrialBook;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Line;
import stillroom.formulary.trial.TrialSet;
import stillroom.science.design.ClassicalDesigns;
import stillroom.science.design.Run;
import stillroom.science.mixture.MixtureRegion;

/** Trials on the hand wash: how much of which surfactant. Design, readings and scores are invented. */
final class HandWashTrials {
    private static final String FLOW = "Viscosity";
    private static final String FOAM = "Foam";
    private static final String SKIN = "Dryness";
    private static final double FREE = 14;

    /** What the readings are off by, one after another. */
    private static final double[] SCATTER = {0.4, -0.7, 0.2, 0.9, -0.3, -0.8, 0.6, -0.1, 0.5, -0.5, 0.1, -0.4};

    private HandWashTrials() {}

    static void write(Desk desk, FormulaVersion base) {
        TrialSet begun = Making.begin(desk, wanted(base), runs(base));
        List<TrialSet.Run> measured = new ArrayList<>();
        for (int i = 0; i < begun.runs().size(); i++) {
            measured.add(measured(begun.runs().get(i), SCATTER[i % SCATTER.length]));
        }
        new TrialBook(desk).write(begun.withRuns(measured));
        HandWashCurve.write(desk, base);
    }

    private static TrialSet wanted(FormulaVersion base) {
        return new TrialSet(
                "",
                "How much of which surfactant",
                new TrialSet.Base(base.productId(), base.number()),
                0,
                List.of(
                        component(base, "water-purified", "Water", share(base) - 31),
                        component(base, "sles-27", "Laureth sulfate", 26),
                        component(base, "cocamidopropyl-betaine-30", "Betaine", 5)),
                share(base),
                List.of(),
                List.of(),
                List.of(
                        new TrialSet.Response(FLOW, "mPa s", TrialSet.Aim.TARGET, 1500, 3000, 5000, false),
                        new TrialSet.Response(FOAM, "ml after 1 min", TrialSet.Aim.LARGER, 120, 160, 160, false),
                        new TrialSet.Response(SKIN, "score, 0 to 10", TrialSet.Aim.SMALLER, 2, 2, 6, true)),
                new TrialSet.Chosen("QUADRATIC", "D", 1, 7),
                List.of());
    }

    private static TrialSet.Component component(FormulaVersion base, String material, String name, double least) {
        Line line = base.formula().lines().stream()
                .filter(one -> one.materialKey().equals(material))
                .findFirst()
                .orElseThrow();
        double low = material.equals("water-purified") ? least - FREE : least;
        return new TrialSet.Component(line.id(), name, low, low + FREE);
    }

    /** Water, laureth sulfate and betaine together: all but the small lines of the formula. */
    private static double share(FormulaVersion base) {
        double others = base.formula().lines().stream()
                .mapToDouble(line -> line.amount()
                        .match(
                                fixed -> List.of("sles-27", "cocamidopropyl-betaine-30")
                                                .contains(line.materialKey())
                                        ? 0
                                        : fixed.percent().value().doubleValue(),
                                () -> 0.0,
                                reading -> reading.expected().value().doubleValue()))
                .sum();
        return 100 - others;
    }

    /** A simplex centroid above the least amounts, its middle three times and its corners twice. */
    private static List<Run> runs(FormulaVersion base) {
        TrialSet wanted = wanted(base);
        List<Double> lower = wanted.components().stream()
                .map(one -> one.low() / wanted.share())
                .toList();
        MixtureRegion region = new MixtureRegion(lower, List.of(1.0, 1.0, 1.0), List.of());
        List<Run> plain = new ArrayList<>(ClassicalDesigns.centroid(3));
        plain.addAll(plain.subList(6, 7));
        plain.addAll(List.copyOf(plain.subList(6, 7)));
        plain.addAll(List.copyOf(plain.subList(0, 3)));
        return plain.stream().map(run -> ClassicalDesigns.above(region, run)).toList();
    }

    private static TrialSet.Run measured(TrialSet.Run run, double scatter) {
        double water = run.fractions().get(0);
        double sulfate = run.fractions().get(1);
        double betaine = run.fractions().get(2);
        double flow =
                2600 + 42_000 * (sulfate - 0.33) * (betaine - 0.02) + 9000 * (betaine - 0.1) - 3000 * (water - 0.5);
        double foam = 138 + 260 * (sulfate - 0.33) - 120 * (betaine - 0.1) * (betaine - 0.1) * 40;
        double dryness = 4.2 + 18 * (sulfate - 0.33) - 22 * (betaine - 0.1);
        Map<String, Double> measured = new LinkedHashMap<>();
        measured.put(FLOW, Math.rint((flow + 60 * scatter) / 10) * 10);
        measured.put(FOAM, Math.rint(foam + 2 * scatter));
        measured.put(SKIN, Math.rint(10 * (dryness - 0.25 * scatter)) / 10);
        return new TrialSet.Run(
                run.version(), run.order(), run.block(), run.fractions(), run.settings(), measured, Map.of(), "");
    }
}
