package stillroom.science.mixture;

/** How far a Scheffé model follows the blending of the components. */
public enum Blending {
    /** Σ b·x. */
    LINEAR,
    /** And each pair, Σ b·x·x. */
    QUADRATIC,
    /** And each three, Σ b·x·x·x. */
    SPECIAL_CUBIC
}
