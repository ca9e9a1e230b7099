package stillroom.formulary.reformulation;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stillroom.formulary.formula.Line;
import stillroom.formulary.judgement.pot.Emulsion;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Substance;

/**
 * A material that may stand in the new formula: a line that is there, or a newcomer from the shelf.
 *
 * @param line the line, where it is one already
 * @param now its mass fraction in the present formula
 * @param fixed it stays at just that
 * @param contents substances of 1 g of it
 * @param costPer100g what 100 g of it cost
 * @param charge net charge that it brings at the present pH, middle of its range [mmol/kg]; empty where no figure is recorded
 * @param inPlace of which line that goes, for its effect
 */
record Candidate(
        Material card,
        Optional<Line> line,
        double now,
        boolean fixed,
        List<Share> contents,
        OptionalDouble costPer100g,
        OptionalDouble charge,
        Optional<InPlace> inPlace) {
    boolean isNewcomer() {
        return line.isEmpty();
    }

    String key() {
        return card.key();
    }

    /** All of its emulsifiers have an HLB, or it has none. */
    boolean hasHlb() {
        return Emulsion.between(contents).stream()
                .allMatch(share -> Emulsion.hlbOf(share).isPresent());
    }

    /** All of its oils have a required HLB, or it has none. */
    boolean hasRequiredHlb() {
        return Emulsion.oils(contents).stream()
                .allMatch(share ->
                        share.substance().flatMap(Substance::requiredHlb).isPresent());
    }
}
