package stillroom.formulary.reformulation;

import stillroom.formulary.formula.Line;

/**
 * How much of a newcomer does what a line did that is to go.
 *
 * @param key of the material that goes
 * @param of its name
 * @param dose mass fraction that does the same
 */
record InPlace(String key, String of, double dose) {
    boolean isFor(Line line) {
        return line.materialKey().equals(key);
    }
}
