package stillroom.science.blend;

/**
 * One thing that a blend demands, which might be given up.
 *
 * @param of position of the limit, the use limit or the ingredient that it concerns
 */
public record Requirement(Kind kind, int of) {
    /** In the order in which a search for a conflict tries to do without them. */
    public enum Kind {
        /** An ingredient's least dose. */
        LEAST_DOSE,
        /** That an ingredient may not be absent. */
        PRESENCE,
        /** An ingredient's greatest fraction. */
        MOST,
        USE_LIMIT,
        LIMIT_MIN,
        LIMIT_MAX
    }
}
