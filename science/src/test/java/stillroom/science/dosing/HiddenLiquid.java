package stillroom.science.dosing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import stillroom.science.equilibrium.AcidBase;
import stillroom.science.equilibrium.Component;
import stillroom.science.equilibrium.Equilibrium;
import stillroom.science.equilibrium.EquilibriumSolver;
import stillroom.science.equilibrium.Solution;
import stillroom.science.equilibrium.StrongIon;
import stillroom.science.equilibrium.WaterModel;

/**
 * An invented liquid that the fit does not know: one to four buffer groups, acids and bases, in a salt background, whose
 * buffer capacity stays between 0.002 and 0.1 mol/kg per pH on the way from its pH to the target.
 */
final class HiddenLiquid {
    private static final EquilibriumSolver SOLVER = new EquilibriumSolver(WaterModel.STANDARD);
    static final Corrector CITRIC_50 = new Corrector(
            "citric acid 50 %",
            List.of(new Component(AcidBase.of("citric", 0, 3.128, 4.761, 6.396), 500 / 192.124)), List.of(), 0.5);
    static final Corrector LACTIC_80 = new Corrector(
            "lactic acid 80 %", List.of(new Component(AcidBase.of("lactic", 0, 3.86), 800 / 90.078)), List.of(), 0.2);
    static final Corrector SODA_10 =
            new Corrector("sodium hydroxide 10 %", List.of(), List.of(new StrongIon("Na+", 1, 100 / 39.997)), 0.9);
    static final Corrector TRIETHANOLAMINE_85 = new Corrector(
            "triethanolamine 85 %",
            List.of(new Component(AcidBase.of("triethanolamine", 1, 7.762), 850 / 149.19)),
            List.of(new StrongIon("balance", -1, 0)),
            0.15);

    final double water;
    final double targetPh;
    final double startPh;
    final Corrector corrector;
    private final List<Component> groups;
    private final double strong;

    private HiddenLiquid(
            double water, List<Component> groups, double startPh, double targetPh, Corrector corrector, double strong) {
        this.water = water;
        this.groups = groups;
        this.startPh = startPh;
        this.targetPh = targetPh;
        this.corrector = corrector;
        this.strong = strong;
    }

    static HiddenLiquid next(SplittableRandom random) {
        while (true) {
            List<Component> groups = new ArrayList<>();
            for (int i = random.nextInt(1, 5); i > 0; i--) {
                int charge = random.nextInt(0, 2);
                double amount = 0.002 * Math.pow(10, random.nextDouble(0, 2));
                groups.add(new Component(AcidBase.of("hidden" + i, charge, random.nextDouble(2, 11)), amount));
            }
            double start = random.nextDouble(4, 9);
            boolean down = random.nextBoolean();
            double target = start + (down ? -1 : 1) * random.nextDouble(0.3, 2);
            Corrector corrector = down
                    ? (random.nextBoolean() ? CITRIC_50 : LACTIC_80)
                    : (random.nextBoolean() ? SODA_10 : TRIETHANOLAMINE_85);
            boolean reachable = target > 3.5 && target < (corrector == TRIETHANOLAMINE_85 ? 8 : 9.5);
            HiddenLiquid liquid = of(random.nextDouble(0.6, 0.95), groups, start, target, corrector);
            if (reachable && liquid.capacityInside()) {
                return liquid;
            }
        }
    }

    private static HiddenLiquid of(
            double water, List<Component> groups, double start, double target, Corrector corrector) {
        double low = -2;
        double high = 2;
        HiddenLiquid liquid = new HiddenLiquid(water, groups, start, target, corrector, 0);
        for (int i = 0; i < 60; i++) {
            liquid = new HiddenLiquid(water, groups, start, target, corrector, (low + high) / 2);
            if (liquid.pH(1000, List.of()) < start) {
                low = liquid.strong;
            } else {
                high = liquid.strong;
            }
        }
        return liquid;
    }

    private boolean capacityInside() {
        for (int i = 0; i <= 10; i++) {
            double pH = startPh + (targetPh - startPh) * i / 10;
            double capacity =
                    of(water, groups, pH, pH, corrector).solve(1000, List.of()).bufferCapacityMolPerKg() * water;
            if (capacity < 0.002 || capacity > 0.1) {
                return false;
            }
        }
        return true;
    }

    double pH(double grams, List<Addition> additions) {
        return solve(grams, additions).pH();
    }

    private Equilibrium solve(double grams, List<Addition> additions) {
        double waterGrams = grams * water;
        for (Addition addition : additions) {
            waterGrams += addition.grams() * addition.corrector().waterMassFraction();
        }
        List<Component> components = new ArrayList<>();
        for (Component group : groups) {
            components.add(new Component(group.system(), group.molPerKg() * grams / waterGrams));
        }
        List<StrongIon> ions = new ArrayList<>();
        ions.add(new StrongIon("strong", strong < 0 ? -1 : 1, Math.abs(strong) * grams / waterGrams));
        ions.add(new StrongIon("Na+", 1, 0.05 * grams / waterGrams));
        ions.add(new StrongIon("Cl-", -1, 0.05 * grams / waterGrams));
        for (Addition addition : additions) {
            double scale = addition.grams() / waterGrams;
            addition.corrector()
                    .components()
                    .forEach(c -> components.add(new Component(c.system(), c.molPerKg() * scale)));
            addition.corrector()
                    .ions()
                    .forEach(i -> ions.add(new StrongIon(i.name(), i.charge(), i.molPerKg() * scale)));
        }
        return SOLVER.solve(new Solution(components, ions, 25, Optional.empty()));
    }
}
