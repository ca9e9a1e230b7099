package stillroom.formulary.material;

/** The charge of a surfactant or polymer in water at the pH of use. */
public enum ChargeClass {
    ANIONIC,
    CATIONIC,
    AMPHOTERIC,
    NONIONIC,
    /** Neither surfactant nor polymer: the question does not arise. */
    NONE
}
