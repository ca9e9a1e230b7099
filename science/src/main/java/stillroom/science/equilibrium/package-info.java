/**
 * Acid-base equilibria in water: pH, ionic strength, species and buffer capacity from the composition.
 *
 * <p>The model, complete enough to be computed again by anyone:
 *
 * <ol>
 *   <li>Amounts are molalities m, mol per kg of water. The activity of water is 1. pH = -log10 a(H+) = -log10(g(1) m(H+)).
 *   <li>Each dissociation: K = a(H+) a(less protonated) / a(more protonated), a = g(z) m, for macroscopic constants. The
 *       charge z of a form that has lost j protons is the charge of the fully protonated form minus j. Ion pairs,
 *       precipitation, micelles and a second liquid phase are left out.
 *   <li>Water: Kw = a(H+) a(OH-).
 *   <li>Activity: log10 g(z) = -A(T) z² (√I/(1+√I) - 0.3 I); g = 1 for every form without net charge, zwitterions
 *       included; I = ½ Σ m z² over all ions, H+, OH- and strong ions included. Above I = 2 the value at 2 is kept.
 *   <li>A(T) = 0.509 (d(T)/d(25 °C))^½ (e(25 °C) 298.15 / (e(T) T))^1.5 with density d and permittivity e of {@link
 *       stillroom.science.equilibrium.WaterProperties}.
 *   <li>Temperature: T = °C + 273.15, R = 8.31446261815324 J/(mol K); pK(T) = pK25 + ((dH - 298.15 dCp)(1/T - 1/298.15) -
 *       dCp ln(T/298.15)) / (R ln 10); for water pK25 = 13.995, dH = 56380 J/mol, dCp = -188.9 J/(mol K).
 *   <li>Closed vessel: the total of each acid or base is fixed. Open vessel: the amount of the uncharged dissolved gas is
 *       fixed at Henry's constant times partial pressure, log10 of Henry's constant moving with temperature as -pK does.
 *   <li>Unknowns: a(H+) and I, from electroneutrality and the definition of I.
 * </ol>
 *
 * <p>Range: |z| up to 4, I up to 0.5 mol/kg, 5 to 60 °C; beyond, the answer is marked.
 */
@org.jspecify.annotations.NullMarked
package stillroom.science.equilibrium;
