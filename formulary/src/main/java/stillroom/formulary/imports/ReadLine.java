package stillroom.formulary.imports;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.formula.Amount;

/**
 * An ingredient as it was read.
 *
 * @param row in the sheet as it was read, from 0
 * @param nameCell where its name stands, such as "B7"
 * @param amountCell where its amount stands
 * @param names first the one that is shown
 * @param written the amount as it stands in the sheet
 * @param amount what was made of it; empty where that cannot be said
 * @param phase name of its phase, empty where the sheet has none
 */
public record ReadLine(
        int row,
        String nameCell,
        String amountCell,
        List<String> names,
        String cas,
        String written,
        Optional<Amount> amount,
        String phase,
        String note,
        List<Flag> flags) {
    public ReadLine {
        names = List.copyOf(names);
        flags = List.copyOf(flags);
    }

    public String name() {
        return names.isEmpty() ? "" : names.get(0);
    }

    /** Whether something about it may be wrong. */
    public boolean isDoubtful() {
        return amount.isEmpty() || flags.stream().anyMatch(Flag::doubtful);
    }
}
