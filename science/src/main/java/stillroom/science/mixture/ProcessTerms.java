package stillroom.science.mixture;

/** How process variables w (such as temperature or speed, coded -1 to 1) enter a Scheffé model. */
public enum ProcessTerms {
    /** Each component's linear term may change with each variable: x·w. */
    LINEAR,
    /** And each pair and square of the variables: w·w, w². */
    QUADRATIC,
    /** Every blending term may change with each variable, and with each pair of them. */
    CROSSED
}
