package stillroom.formulary.rule;

import java.util.List;
import java.util.Optional;

/**
 * What a rule row wants printed.
 *
 * @param warnings keys of the warnings; none where the row wants none
 * @param abovePercent from which share on, counted as the row counts [% of the product]; empty: from any share
 */
public record LabelDemand(List<String> warnings, Optional<Double> abovePercent) {
    public LabelDemand {
        warnings = List.copyOf(warnings);
    }
}
