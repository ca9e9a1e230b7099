package stillroom.formulary.reformulation;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stillroom.formulary.formula.Line;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.material.Material;

/**
 * A material that may stand in the new formula: a line that is there, or a newcomer from the shelf.
 *
 * @param line the line, where it is one already
 * @param now its mass fraction in the present formula
 * @param fixed it stays at just that
 * @param contents substances of 1 g of it
 * @param costPer100g what 100 g of it cost
 */
record Candidate(
        Material card,
        Optional<Line> line,
        double now,
        boolean fixed,
        List<Share> contents,
        OptionalDouble costPer100g) {
    boolean isNewcomer() {
        return line.isEmpty();
    }

    String key() {
        return card.key();
    }
}
