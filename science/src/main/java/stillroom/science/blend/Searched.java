package stillroom.science.blend;

import java.util.Optional;

/**
 * What a search knows when it ends.
 *
 * @param bound no blend is below it
 * @param stopped patience was over before the proof
 */
record Searched(Optional<Incumbent.Found> best, double bound, long nodes, boolean stopped) {}
