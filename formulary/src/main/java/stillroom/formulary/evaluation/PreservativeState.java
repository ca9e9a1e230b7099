package stillroom.formulary.evaluation;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.quantity.Interval;

/**
 * What becomes of one preservative in the pot; figures to look at, never a verdict, which only a challenge test gives.
 *
 * @param substance key of the acid, phenol or neutral preservative, salts counted as it
 * @param totalPercent in the pot, counted so [%]
 * @param undissociatedPercent share that is undissociated over the product's pH [% of the total]
 * @param freePercent undissociated in the water phase, what dissolves in the oil phase taken off [% of the water phase]
 * @param solubilityPercent of the free acid in water, where known [%]
 * @param against held against published inhibitory concentrations, one per group of organisms on record
 * @param note what was left out
 */
public record PreservativeState(
        String substance,
        String name,
        List<String> lines,
        double totalPercent,
        Interval undissociatedPercent,
        Interval freePercent,
        Optional<Double> solubilityPercent,
        List<Inhibition> against,
        String note) {
    /** Groups of organisms. */
    public enum Group {
        GRAM_NEGATIVE("Gram-negative bacteria"),
        GRAM_POSITIVE("Gram-positive bacteria"),
        YEAST("yeasts"),
        MOULD("moulds");

        private final String words;

        Group(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** Where the free preservative stands beside the published figures, at the less favourable end of its range. */
    public enum Standing {
        BELOW_ALL,
        AMONG,
        ABOVE_ALL
    }

    /**
     * Published inhibitory concentrations of one preservative against one group.
     *
     * @param publishedPercent lowest and highest figure on record [%]
     */
    public record Inhibition(Group group, Interval publishedPercent, Standing standing, String source) {}

    public PreservativeState {
        lines = List.copyOf(lines);
        against = List.copyOf(against);
    }

    /** Whether the free acid exceeds its solubility at the unfavourable end, so that it may crystallise. */
    public boolean mayCrystallise() {
        return solubilityPercent.filter(most -> freePercent.high() > most).isPresent();
    }
}
