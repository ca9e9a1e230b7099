package stillroom.formulary.evaluation;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.rule.Organisms;

/**
 * What becomes of one preservative in the pot; figures to look at, never a verdict, which only a challenge test gives.
 *
 * @param substance key of the acid, phenol or neutral preservative, salts counted as it
 * @param totalPercent in the pot, counted so, nominal [%]
 * @param totalRangePercent the same over the ranges of amounts and compositions [%]
 * @param undissociatedPercent share that is undissociated over the product's pH [% of what is in the water]
 * @param inOilPercent share that sits in the oil phase, or why that is not known [% of the total]
 * @param inMicellesPercent share that surfactant micelles hold, or why that is not known [% of the total]
 * @param freePercent undissociated in the water phase, less favourable end first [% of the water phase]
 * @param freeIsAtMost a loss is not known, so that {@code freePercent} begins at 0 and only its upper end says something
 * @param solubilityPercent of the free acid in water, where known [%]
 * @param against held against published inhibitory concentrations, one per group of organisms on record
 * @param note what the figures rest on
 */
public record PreservativeState(
        String substance,
        String name,
        List<String> lines,
        double totalPercent,
        Interval totalRangePercent,
        Interval undissociatedPercent,
        Outcome<Interval> inOilPercent,
        Outcome<Interval> inMicellesPercent,
        Interval freePercent,
        boolean freeIsAtMost,
        Optional<Double> solubilityPercent,
        List<Inhibition> against,
        String note) {
    /** Where the free preservative stands beside the published figures, at the less favourable end of its range. */
    public enum Standing {
        BELOW_ALL,
        AMONG,
        ABOVE_ALL,
        /** At most among or above them; how much is lost is not known. */
        NOT_KNOWN
    }

    /**
     * Published inhibitory concentrations of one preservative against one group.
     *
     * @param publishedPercent lowest and highest figure on record [%]
     */
    public record Inhibition(Organisms group, Interval publishedPercent, Standing standing, String source) {}

    public PreservativeState {
        lines = List.copyOf(lines);
        against = List.copyOf(against);
    }

    /** Whether the free acid exceeds its solubility at the unfavourable end, so that it may crystallise. */
    public boolean mayCrystallise() {
        return solubilityPercent.filter(most -> freePercent.high() > most).isPresent();
    }
}
