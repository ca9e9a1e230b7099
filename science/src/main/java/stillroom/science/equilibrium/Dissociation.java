package stillroom.science.equilibrium;

import static stillroom.science.equilibrium.WaterModel.KELVIN_AT_25;
import static stillroom.science.equilibrium.WaterModel.LN_10;

/**
 * One loss of a proton: the thermodynamic constant at 25 °C and how it moves with the temperature.
 *
 * @param pKa at 25 °C and ionic strength 0, molality scale [-]
 * @param enthalpyKJPerMol standard enthalpy of the dissociation at 25 °C, 0 where unknown [kJ/mol]
 * @param heatCapacityJPerMolK standard heat capacity change of the dissociation, 0 where unknown [J/(mol K)]
 */
public record Dissociation(double pKa, double enthalpyKJPerMol, double heatCapacityJPerMolK) {

    /** Molar gas constant [J/(mol K)]. Source: CODATA 2018, exact. */
    static final double GAS_CONSTANT = 8.31446261815324;

    public Dissociation {
        Limits.within("pKa", pKa, -15, 30, "");
        Limits.within("enthalpyKJPerMol", enthalpyKJPerMol, -500, 500, "kJ/mol");
        Limits.within("heatCapacityJPerMolK", heatCapacityJPerMolK, -5000, 5000, "J/(mol K)");
    }

    /** A dissociation whose enthalpy is not known: the same pKa at every temperature. */
    public static Dissociation of(double pKa) {
        return new Dissociation(pKa, 0, 0);
    }

    /**
     * pKa at a temperature by van 't Hoff's equation with a constant heat capacity change [-]:
     * pK(T) = pK25 + ((dH - T25 dCp)(1/T - 1/T25) - dCp ln(T/T25)) / (R ln 10).
     */
    public double pKaAt(double celsius) {
        if (celsius == 25 || (enthalpyKJPerMol == 0 && heatCapacityJPerMolK == 0)) {
            return pKa;
        }
        double kelvin = celsius + 273.15;
        double enthalpyPart =
                (1000 * enthalpyKJPerMol - KELVIN_AT_25 * heatCapacityJPerMolK) * (1 / kelvin - 1 / KELVIN_AT_25);
        double heatCapacityPart = -heatCapacityJPerMolK * Math.log(kelvin / KELVIN_AT_25);
        return pKa + (enthalpyPart + heatCapacityPart) / (GAS_CONSTANT * LN_10);
    }
}
