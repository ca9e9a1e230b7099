package stillroom.science.dosing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.science.equilibrium.AcidBase;
import stillroom.science.equilibrium.Component;
import stillroom.science.equilibrium.Equilibrium;
import stillroom.science.equilibrium.EquilibriumSolver;
import stillroom.science.equilibrium.Solution;
import stillroom.science.equilibrium.StrongIon;
import stillroom.science.equilibrium.WaterModel;

/**
 * The liquid as known chemistry, effective one-proton acids on a grid of pKa, and a strong ion.
 *
 * <p>Parameters: first the strong charge per kilogram of liquid, beyond what leaves the effective acids uncharged in sum
 * at the reference pH (so that amounts and charge do not chase each other); then ln(amount, mol/kg) of each acid.
 */
final class BufferModel {
    static final double GRID = 0.75;
    private static final double BEYOND = 1.2;
    private static final double LARGEST_LOG = Math.log(3);

    private final KnownChemistry chemistry;
    private final List<AcidBase> groups = new ArrayList<>();
    private final double[] chargedShare;
    private final EquilibriumSolver solver = new EquilibriumSolver(WaterModel.STANDARD);

    BufferModel(KnownChemistry chemistry, double lowestPh, double highestPh, double referencePh) {
        this.chemistry = chemistry;
        double low = Math.max(lowestPh - BEYOND, 0);
        double high = Math.min(highestPh + BEYOND, 14);
        int count = (int) Math.ceil((high - low) / GRID) + 1;
        chargedShare = new double[count];
        for (int i = 0; i < count; i++) {
            double pKa = low + i * (high - low) / (count - 1);
            groups.add(AcidBase.of("group" + i, 0, pKa));
            chargedShare[i] = 1 / (1 + Math.pow(10, pKa - referencePh));
        }
    }

    int parameters() {
        return groups.size() + 1;
    }

    double pH(Mixture mixture, double[] parameters) {
        return solve(mixture, parameters).pH();
    }

    Equilibrium solve(Mixture mixture, double[] parameters) {
        double water = water(mixture);
        double perWater = mixture.liquidGrams() / water;
        List<Component> components = new ArrayList<>();
        List<StrongIon> ions = new ArrayList<>();
        double charge = parameters[0];
        for (int i = 0; i < groups.size(); i++) {
            double molPerKg = Math.exp(Math.min(parameters[i + 1], LARGEST_LOG));
            charge += molPerKg * chargedShare[i];
            components.add(new Component(groups.get(i), molPerKg * perWater));
        }
        ions.add(new StrongIon("balance", charge < 0 ? -1 : 1, Math.min(Math.abs(charge) * perWater, 50)));
        enter(chemistry.components(), chemistry.ions(), perWater, components, ions);
        for (Addition addition : mixture.additions()) {
            Corrector corrector = addition.corrector();
            enter(corrector.components(), corrector.ions(), addition.grams() / water, components, ions);
        }
        return solver.solve(new Solution(components, ions, chemistry.celsius(), Optional.empty()));
    }

    /**
     * Change of the pH with each parameter: change of charge over buffer capacity.
     *
     * <p>The change of the activity coefficients with a group's amount is left out, a few percent of each figure: it
     * steers the search and the width of intervals, not the fitted values.
     */
    double[] slope(Mixture mixture, double[] parameters) {
        Equilibrium here = solve(mixture, parameters);
        double perCharge = mixture.liquidGrams() / water(mixture) / here.bufferCapacityMolPerKg();
        double activity = WaterModel.STANDARD.activityCoefficient(1, here.ionicStrengthMolPerKg(), chemistry.celsius());
        double[] slope = new double[parameters.length];
        slope[0] = perCharge;
        for (int i = 0; i < groups.size(); i++) {
            double pKa = groups.get(i).steps().get(0).pKa();
            double charged = 1 / (1 + activity * Math.pow(10, pKa - here.pH()));
            slope[i + 1] = Math.exp(Math.min(parameters[i + 1], LARGEST_LOG)) * perCharge * (chargedShare[i] - charged);
        }
        return slope;
    }

    private double water(Mixture mixture) {
        double water = mixture.liquidGrams() * chemistry.waterMassFraction();
        for (Addition addition : mixture.additions()) {
            water += addition.grams() * addition.corrector().waterMassFraction();
        }
        return water;
    }

    private static void enter(
            List<Component> from, List<StrongIon> ionsFrom, double scale, List<Component> into, List<StrongIon> ions) {
        for (Component component : from) {
            into.add(new Component(component.system(), component.molPerKg() * scale));
        }
        for (StrongIon ion : ionsFrom) {
            ions.add(new StrongIon(ion.name(), ion.charge(), ion.molPerKg() * scale));
        }
    }
}
