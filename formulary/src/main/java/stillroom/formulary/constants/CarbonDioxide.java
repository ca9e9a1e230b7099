package stillroom.formulary.constants;

import stillroom.science.equilibrium.DissolvedGas;

/** The carbon dioxide of the air over an open vessel. */
public final class CarbonDioxide {

    /** Henry's constant at 25 °C [mol/(kg atm)]. Source: Plummer and Busenberg 1982, log K = -1.468; from memory. */
    public static final double SOLUBILITY_AT_25 = 0.03404;

    /** Enthalpy of dissolution [kJ/mol]. Source: as above, their slope at 25 °C; from memory. */
    public static final double ENTHALPY_KJ_PER_MOL = -19.98;

    /** Share of carbon dioxide in outdoor air in the middle of the 2020s, by volume; rooms have up to three times as much. */
    public static final double OUTDOOR_PARTS_PER_MILLION = 425;

    private CarbonDioxide() {}

    /** Air of a share of carbon dioxide at one atmosphere [parts per million by volume]. */
    public static DissolvedGas inAir(AcidConstants constants, double partsPerMillion) {
        AcidConstant acid = constants
                .find("carbonic-acid")
                .orElseThrow(() -> new IllegalArgumentException("the table of constants has no carbonic-acid"));
        return new DissolvedGas(acid.system(), SOLUBILITY_AT_25, ENTHALPY_KJ_PER_MOL, partsPerMillion * 1e-6);
    }
}
