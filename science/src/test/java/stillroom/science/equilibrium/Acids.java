package stillroom.science.equilibrium;

import java.util.List;

/**
 * Thermodynamic constants used by the tests.
 *
 * <p>pKa: Kaye and Laby, Tables of Physical and Chemical Constants, 3.9.7 (phosphoric, oxalic, phthalic, glycine; read);
 * citric, carbonic, boric, tartaric as noted (from memory). Enthalpies and heat capacities: Goldberg, Kishore and
 * Lennen, J. Phys. Chem. Ref. Data 31, 231 (2002), table 1 (from memory).
 */
final class Acids {
    private Acids() {}

    static final AcidBase PHOSPHORIC = new AcidBase(
            "phosphoric",
            0,
            List.of(
                    new Dissociation(2.148, -8.0, -141),
                    new Dissociation(7.198, 3.6, -230),
                    new Dissociation(12.375, 16.0, -242)));
    static final AcidBase PHTHALIC = new AcidBase(
            "phthalic", 0, List.of(new Dissociation(2.950, -2.70, -91), new Dissociation(5.408, -2.17, -295)));
    static final AcidBase BORIC = new AcidBase("boric", 0, List.of(new Dissociation(9.237, 13.8, -240)));
    static final AcidBase OXALIC = AcidBase.of("oxalic", 0, 1.271, 4.266);
    static final AcidBase CARBONIC = AcidBase.of("carbonic", 0, 6.352, 10.329);
    /** Bates and Canham; from memory. */
    static final AcidBase TARTARIC = AcidBase.of("tartaric", 0, 3.036, 4.366);
    /** Bates and Pinching 1949; from memory. */
    static final AcidBase CITRIC = AcidBase.of("citric", 0, 3.128, 4.761, 6.396);

    /** Robinson and Stokes; from memory (Martell and Smith 4.757, read). */
    static final AcidBase ACETIC = AcidBase.of("acetic", 0, 4.756);

    static final AcidBase BENZOIC = AcidBase.of("benzoic", 0, 4.204);
    static final AcidBase LACTIC = AcidBase.of("lactic", 0, 3.86);
    static final AcidBase GLYCINE = AcidBase.of("glycine", 1, 2.350, 9.780);
    static final AcidBase TRIS = new AcidBase("tris", 1, List.of(new Dissociation(8.072, 47.45, -59)));
    static final AcidBase AMMONIUM = AcidBase.of("ammonium", 1, 9.244);
    static final AcidBase ARGININE = AcidBase.of("arginine", 2, 1.82, 8.99, 12.5);
    static final AcidBase EDTA = AcidBase.of("edta", 2, 0, 1.5, 2.0, 2.69, 6.13, 10.37);

    static final EquilibriumSolver SOLVER = new EquilibriumSolver(WaterModel.STANDARD);

    static double pH(Solution solution) {
        return SOLVER.solve(solution).pH();
    }

    static Solution at25() {
        return Solution.water(25);
    }
}
