package stillroom.science.blend;

/**
 * How far a search is.
 *
 * @param best objective of the best blend so far, positive infinity where there is none yet
 * @param bound no blend can be below it
 * @param nodes relaxations looked at
 */
public record Progress(double best, double bound, long nodes) {
    public boolean hasBlend() {
        return best < Double.POSITIVE_INFINITY;
    }
}
