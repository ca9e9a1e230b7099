package stillroom.science.design;

/** What makes a design good. */
public enum Criterion {
    /** The smallest joint confidence region of the coefficients: the largest det(X'X). */
    D,
    /** The smallest mean variance of a prediction over the region. */
    I
}
