package stillroom.formulary.constants;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.quantity.Interval;
import stillroom.science.equilibrium.AcidBase;
import stillroom.science.equilibrium.Dissociation;

/**
 * A weak acid or base that gathers, with constants known only as a range: a surfactant in micelles or a polyacid.
 *
 * <p>In micelles and along a polymer the constants shift with charge and salt; the range spans what is published, and a
 * computation has to take both ends.
 *
 * @param substance key in the substance table
 * @param chargeFullyProtonated charge with all protons [-]
 * @param steps range of each dissociation constant, in the order in which the protons leave
 * @param spread standard deviation of the constants over the groups of a polymer; 0 for a surfactant [pH]
 * @param groupsMolPerKg acid groups of a polymer; of anything else its molar mass tells [mol/kg]
 * @param cations strong cations that one mole brings as sold, where its own pH does not tell [mol/mol]
 */
public record EffectiveConstant(
        String substance,
        int chargeFullyProtonated,
        List<Interval> steps,
        double spread,
        Optional<Interval> groupsMolPerKg,
        double cations,
        String source) {
    /** Seven equally filled slices of a normal distribution, by their middles [standard deviations]. */
    private static final double[] SLICES = {-1.4652, -0.7916, -0.3661, 0, 0.3661, 0.7916, 1.4652};

    public EffectiveConstant {
        steps = List.copyOf(steps);
    }

    /**
     * What a solver takes: one system, or for a polymer several of equal share.
     *
     * @param position where in the range of constants, 0 for the lowest, 1 for the highest
     */
    public List<AcidBase> systems(double position) {
        if (spread == 0) {
            return List.of(system(substance, position, 0));
        }
        List<AcidBase> systems = new ArrayList<>();
        for (int slice = 0; slice < SLICES.length; slice++) {
            systems.add(system(substance + " " + (slice + 1), position, SLICES[slice] * spread));
        }
        return systems;
    }

    private AcidBase system(String name, double position, double shift) {
        return new AcidBase(
                name,
                chargeFullyProtonated,
                steps.stream()
                        .map(step -> new Dissociation(at(step, position) + shift, 0, 0))
                        .toList());
    }

    /** Mean charge of one mole at a pH, activities taken as concentrations [mol/mol]. */
    public double meanCharge(double pH, double position) {
        double sum = 0;
        double[] shifts = spread == 0 ? new double[] {0} : SLICES;
        for (double shift : shifts) {
            sum += meanCharge(pH, position, shift * spread);
        }
        return sum / shifts.length;
    }

    private double meanCharge(double pH, double position, double shift) {
        double weight = 1;
        double all = 1;
        double charge = chargeFullyProtonated;
        for (int lost = 1; lost <= steps.size(); lost++) {
            weight *= Math.pow(10, pH - at(steps.get(lost - 1), position) - shift);
            all += weight;
            charge += weight * (chargeFullyProtonated - lost);
        }
        return charge / all;
    }

    private static double at(Interval step, double position) {
        return step.low() + position * (step.high() - step.low());
    }
}
