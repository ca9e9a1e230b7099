package stillroom.formulary.plan;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.quantity.Grams;

/**
 * A formula turned into grams for one batch. The targets add up to the batch exactly.
 *
 * @param reckoning how the batch size came about, one sentence
 * @param shortages what the shelf lacks; a plan may be worked all the same
 * @param residue line that took the rounding residue
 */
public record Plan(
        Grams batch, String reckoning, List<PlannedLine> lines, List<Shortage> shortages, Optional<String> residue) {
    public Plan {
        lines = List.copyOf(lines);
        shortages = List.copyOf(shortages);
    }

    public Optional<PlannedLine> line(String lineId) {
        return lines.stream().filter(line -> line.lineId().equals(lineId)).findFirst();
    }

    /** Whether some line should not be worked like this. */
    public boolean refused() {
        return lines.stream().flatMap(line -> line.advice().stream()).anyMatch(PlannedLine.Advice::refuses);
    }

    /**
     * A material of which the book holds too little.
     *
     * @param buy an amount to put on the shopping list, rounded up from what is missing [g]
     */
    public record Shortage(String materialKey, Grams needed, Grams onHand, Grams buy) {
        public Grams missing() {
            return needed.minus(onHand);
        }
    }
}
