package stillroom.formulary.formula;

import java.util.List;
import java.util.Map;
import stillroom.formulary.quantity.Grams;

/**
 * What the author of a formula lets stand on a recipe that others get.
 *
 * @param size batch for which the recipe is written [g]
 * @param step of the balance for which it is written [g]
 * @param lines by line id; lines without an entry have {@link LineWords#NONE}
 * @param suppliers whether it names where the author buys
 * @param prices whether it gives what the author pays
 */
public record HandOut(Grams size, Grams step, Map<String, LineWords> lines, boolean suppliers, boolean prices) {
    public HandOut {
        lines = Map.copyOf(lines);
    }

    public LineWords words(String lineId) {
        return lines.getOrDefault(lineId, LineWords.NONE);
    }

    /**
     * Words about one line.
     *
     * @param why what it is there for; empty leaves it out
     * @param instead substitutions that the author allows, one sentence each
     * @param ownStrength whether the reader is asked how strong their own material is
     */
    public record LineWords(String why, List<String> instead, boolean ownStrength) {
        public static final LineWords NONE = new LineWords("", List.of(), false);

        public LineWords {
            instead = List.copyOf(instead);
        }
    }
}
