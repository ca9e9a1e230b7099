package stillroom.formulary.plan;

import java.util.Optional;
import stillroom.science.weighing.ScaleLine;

/**
 * How a balance that sends plain lines of text is read.
 *
 * @param pattern of a line, as {@link ScaleLine} reads it
 * @param moving text that stands in a line while the weight moves; empty where it only sends at rest
 * @param baud symbols per second on the line
 * @param device path of the serial line on the computer where the program runs; empty where the browser reads it
 */
public record LiveScale(String pattern, String moving, int baud, String device) {
    /** The reader of its lines; none where the pattern cannot be read. */
    public Optional<ScaleLine> line() {
        return ScaleLine.of(pattern, moving);
    }
}
