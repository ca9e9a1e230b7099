package stillroom.science.equilibrium;

import static stillroom.science.equilibrium.WaterModel.LN_10;

import java.util.ArrayList;
import java.util.List;

/** A solved solution, with what is needed to judge it. Immutable. */
public final class Equilibrium {

    /** Charge left over that still counts as electroneutral [mol/kg]. */
    public static final double ELECTRONEUTRAL_WITHIN = 1e-10;

    private final Solution solution;
    private final WaterModel model;
    private final double pH;
    private final double ionicStrength;
    private final double bufferCapacity;
    private final double chargeResidual;
    private final double ionicResidual;
    private final int iterations;
    private final double[] amounts;

    Equilibrium(Solution solution, WaterModel model, ChargeBalance balance, double x, double s, int iterations) {
        this.solution = solution;
        this.model = model;
        this.iterations = iterations;
        balance.evaluate(x, s);
        this.pH = -x / LN_10;
        this.ionicStrength = balance.ionic;
        this.chargeResidual = balance.positive - balance.negative;
        this.ionicResidual = balance.ionic - s * s;
        this.bufferCapacity = capacity(balance, s);
        this.amounts = balance.amounts(x, s);
    }

    /** d(base)/d(pH) along F(x, s) + b = 0 and s² = I(x, s) + b/2, so the added cation's own ionic strength counts. */
    private static double capacity(ChargeBalance balance, double s) {
        double chargeX = balance.positiveX - balance.negativeX;
        double chargeS = balance.positiveS - balance.negativeS;
        double strengthS = 2 * s - balance.ionicS;
        double sPerBase = 0.5 / strengthS;
        double sPerX = balance.ionicX / strengthS;
        return LN_10 * (chargeX + chargeS * sPerX) / (1 + chargeS * sPerBase);
    }

    /** -log10 of the activity of the hydrogen ion, molality scale [-]. */
    public double pH() {
        return pH;
    }

    /** Ionic strength, ½ Σ m z² over all ions [mol/kg]. */
    public double ionicStrengthMolPerKg() {
        return ionicStrength;
    }

    /**
     * Strong base with a singly charged cation that raises the pH by one unit, as a derivative [mol/kg].
     *
     * <p>Includes the change of the activity coefficients.
     */
    public double bufferCapacityMolPerKg() {
        return bufferCapacity;
    }

    /** Charge left over: positive minus negative [mol/kg]. */
    public double chargeResidualMolPerKg() {
        return chargeResidual;
    }

    /** Ionic strength of the species minus the one their activity coefficients were computed with [mol/kg]. */
    public double ionicResidualMolPerKg() {
        return ionicResidual;
    }

    /** Evaluations of the charge balance that were needed. */
    public int iterations() {
        return iterations;
    }

    /** Whether both residuals are within {@link #ELECTRONEUTRAL_WITHIN}, relative to the ionic strength above 1. */
    public boolean converged() {
        double within = ELECTRONEUTRAL_WITHIN * Math.max(1, ionicStrength);
        return Math.abs(chargeResidual) <= within && Math.abs(ionicResidual) <= within;
    }

    /** The borders of the model's range that this solution crosses; empty when it is inside. */
    public List<RangeLimit> exceeded() {
        List<RangeLimit> limits = new ArrayList<>(3);
        if (ionicStrength > 0.5) {
            limits.add(RangeLimit.IONIC_STRENGTH);
        }
        if (largestCharge() > 4) {
            limits.add(RangeLimit.CHARGE);
        }
        if (solution.celsius() < 5 || solution.celsius() > 60) {
            limits.add(RangeLimit.TEMPERATURE);
        }
        return List.copyOf(limits);
    }

    /** Whether the answer lies inside the model's range and the equations are satisfied. */
    public boolean inRange() {
        return converged() && exceeded().isEmpty();
    }

    private int largestCharge() {
        int largest = 1;
        for (Component component : solution.components()) {
            largest = component.molPerKg() > 0
                    ? Math.max(largest, component.system().largestCharge())
                    : largest;
        }
        for (StrongIon ion : solution.ions()) {
            largest = ion.molPerKg() > 0 ? Math.max(largest, Math.abs(ion.charge())) : largest;
        }
        return largest;
    }

    /** Hydrogen and hydroxide ions, every form of every component and of the gas, and the strong ions. */
    public List<Species> species() {
        List<Species> all = new ArrayList<>(amounts.length + solution.ions().size());
        all.add(species("H+", 0, 1, amounts[0]));
        all.add(species("OH-", 0, -1, amounts[1]));
        int at = 2;
        for (Component component : solution.components()) {
            at = addForms(all, component.system(), at);
        }
        if (solution.air().isPresent()) {
            addForms(all, solution.air().get().acid(), at);
        }
        for (StrongIon ion : solution.ions()) {
            all.add(species(ion.name(), 0, ion.charge(), ion.molPerKg()));
        }
        return List.copyOf(all);
    }

    private int addForms(List<Species> all, AcidBase system, int from) {
        for (int lost = 0; lost <= system.steps().size(); lost++) {
            all.add(species(system.name(), lost, system.chargeFullyProtonated() - lost, amounts[from + lost]));
        }
        return from + system.steps().size() + 1;
    }

    private Species species(String name, int lost, int charge, double molPerKg) {
        double coefficient = model.activityCoefficient(charge, ionicStrength, solution.celsius());
        return new Species(name, lost, charge, molPerKg, coefficient);
    }

    /** What was solved. */
    public Solution solution() {
        return solution;
    }

    /** Expected error of the model at this composition, see {@link ModelUncertainty} [-]. */
    public double pHHalfWidth() {
        return ModelUncertainty.halfWidth(ionicStrength);
    }
}
