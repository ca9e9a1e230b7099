package stillroom.formulary.judgement.preservation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import stillroom.formulary.evaluation.PreservativeState.Inhibition;
import stillroom.formulary.evaluation.PreservativeState.Standing;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.rule.InhibitionFigures;
import stillroom.formulary.rule.Organisms;

/** Where a free concentration stands beside published inhibitory concentrations. */
final class Standings {
    private Standings() {}

    /**
     * @param figures none where nothing is recorded
     * @param freePercent less favourable end first [% of the water phase]
     * @param atMost only the upper end is known
     */
    static List<Inhibition> of(@Nullable InhibitionFigures figures, Interval freePercent, boolean atMost) {
        List<Inhibition> against = new ArrayList<>();
        if (figures == null) {
            return against;
        }
        for (Organisms group : Organisms.values()) {
            Optional<Interval> published = figures.groups().get(group.ordinal());
            if (published.isPresent()) {
                Standing standing = standing(published.get(), freePercent, atMost);
                against.add(new Inhibition(group, published.get(), standing, figures.source()));
            }
        }
        return against;
    }

    private static Standing standing(Interval published, Interval free, boolean atMost) {
        double least = atMost ? free.high() : free.low();
        if (least < published.low()) {
            return Standing.BELOW_ALL;
        }
        if (atMost) {
            return Standing.NOT_KNOWN;
        }
        return least > published.high() ? Standing.ABOVE_ALL : Standing.AMONG;
    }
}
