package stillroom.desk.safety;

import java.util.List;
import java.util.Optional;
import stillroom.desk.chemistry.Studied;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/**
 * The assessor's table of a version.
 *
 * @param exposure to the product in words, or why it is not known
 * @param missing what is not in the table, one sentence; empty where nothing is
 * @param asked the substance whose figures are being entered
 * @param own the form for an exposure of one's own
 */
public record SafetyPage(
        Frame frame,
        Studied of,
        String exposure,
        String exposureSource,
        List<Line> lines,
        String missing,
        Optional<Asked> asked,
        Typed own) {
    public SafetyPage {
        lines = List.copyOf(lines);
    }

    /**
     * One constituent; figures in words.
     *
     * @param key in an address
     * @param below whether the known margin is less than asked for; {@code belowTogether} that over all products
     */
    public record Line(
            String key,
            String name,
            String percent,
            String absorbed,
            String absorptionSource,
            String systemic,
            String departure,
            String margin,
            String aggregate,
            String least,
            boolean below,
            boolean belowTogether,
            String source) {}

    /** The form of one substance. */
    public record Asked(String key, String name, Typed typed) {
        public List<Choice> found() {
            return SafetyForm.FOUND;
        }

        public List<Choice> lengths() {
            return SafetyForm.LENGTHS;
        }
    }
}
