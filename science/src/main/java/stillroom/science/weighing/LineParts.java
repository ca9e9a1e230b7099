package stillroom.science.weighing;

import java.util.ArrayList;
import java.util.List;

/**
 * Whole lines out of what comes in piece by piece. What has no line end yet is kept for the next piece and never read:
 * it may be the first half of a number.
 *
 * @param lines complete ones, in order
 * @param rest begun and not ended
 */
public record LineParts(List<String> lines, String rest) {
    /** Nothing has come in yet. */
    public static final LineParts NONE = new LineParts(List.of(), "");

    private static final int LONGEST_REST = 400;

    public LineParts {
        lines = List.copyOf(lines);
    }

    /** What there is after another piece; lines that were given before are not given again. */
    public LineParts and(String piece) {
        String text = rest + piece;
        List<String> whole = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) == '\n' || text.charAt(i) == '\r') {
                if (i > from) {
                    whole.add(text.substring(from, i));
                }
                from = i + 1;
            }
        }
        String left = text.substring(from);
        // Without a line end for so long it is no line of a balance; its end must not be taken for one.
        return new LineParts(whole, left.length() > LONGEST_REST ? left.substring(0, LONGEST_REST) : left);
    }
}
