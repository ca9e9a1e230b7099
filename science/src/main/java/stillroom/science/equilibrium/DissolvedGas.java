package stillroom.science.equilibrium;

/**
 * A gas above the solution that keeps its dissolved, fully protonated form at a constant amount.
 *
 * <p>For carbon dioxide the acid is carbonic acid with charge 0 and two steps, counted as CO2(aq).
 *
 * @param acid what the gas becomes in water; its fully protonated form is uncharged
 * @param solubilityAt25 Henry's constant at 25 °C [mol/(kg atm)]
 * @param enthalpyKJPerMol enthalpy of dissolution, constant over the range [kJ/mol]
 * @param partialPressureAtm partial pressure in the air above [atm]
 */
public record DissolvedGas(AcidBase acid, double solubilityAt25, double enthalpyKJPerMol, double partialPressureAtm) {
    public DissolvedGas {
        if (acid.chargeFullyProtonated() != 0) {
            throw new IllegalArgumentException(acid.name() + " as a gas must be uncharged when fully protonated");
        }
        Limits.within("solubility of " + acid.name(), solubilityAt25, 0, 100, "mol/(kg atm)");
        Limits.within("enthalpy of dissolution of " + acid.name(), enthalpyKJPerMol, -500, 500, "kJ/mol");
        Limits.within("partial pressure of " + acid.name(), partialPressureAtm, 0, 10, "atm");
    }

    /** Dissolved uncharged gas in equilibrium with the air [mol/kg]. */
    public double neutralMolPerKg(double celsius) {
        double minusLog = new Dissociation(-Math.log10(solubilityAt25), enthalpyKJPerMol, 0).pKaAt(celsius);
        return partialPressureAtm * Math.pow(10, -minusLog);
    }
}
