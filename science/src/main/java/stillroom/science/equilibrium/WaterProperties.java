package stillroom.science.equilibrium;

/** Properties of pure water at atmospheric pressure. */
public final class WaterProperties {

    private WaterProperties() {}

    /**
     * Static relative permittivity of water, 0 to 100 °C [-].
     *
     * <p>Source: Malmberg and Maryott, J. Res. NBS 56, 1 (1956), their equation; from memory.
     */
    public static double permittivity(double celsius) {
        return 87.740 + celsius * (-0.40008 + celsius * (9.398e-4 - celsius * 1.410e-6));
    }

    /**
     * Density of air-free water, 0 to 100 °C [kg/m³].
     *
     * <p>Source: Kell, J. Chem. Eng. Data 20, 97 (1975), equation 16; from memory.
     */
    public static double densityKgPerCubicMetre(double celsius) {
        double t = celsius;
        double above = 999.83952
                + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))));
        return above / (1 + 16.879850e-3 * t);
    }

    /** Debye-Hückel slope relative to 25 °C: (density/density25)^½ (permittivity25 T25 / (permittivity T))^1.5 [-]. */
    public static double debyeHueckelRatio(double celsius) {
        double densities = densityKgPerCubicMetre(celsius) / densityKgPerCubicMetre(25);
        double ratio = permittivity(25) * WaterModel.KELVIN_AT_25 / (permittivity(celsius) * (celsius + 273.15));
        return Math.sqrt(densities * ratio * ratio * ratio);
    }
}
