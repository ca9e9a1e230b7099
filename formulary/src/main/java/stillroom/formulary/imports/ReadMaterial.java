package stillroom.formulary.imports;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Price;

/**
 * A raw material as it was read out of a list.
 *
 * @param names first the one that is shown
 * @param price where money and the amount that it was paid for are both known
 * @param stock amount on the shelf
 * @param lot its code, may be empty
 */
public record ReadMaterial(
        int row,
        String nameCell,
        List<String> names,
        String cas,
        String function,
        String supplier,
        Optional<Price> price,
        Optional<Grams> stock,
        String lot,
        Optional<LocalDate> received,
        Optional<LocalDate> expires,
        String note,
        List<Flag> flags) {
    public ReadMaterial {
        names = List.copyOf(names);
        flags = List.copyOf(flags);
    }

    public String name() {
        return names.isEmpty() ? "" : names.get(0);
    }

    public boolean isDoubtful() {
        return flags.stream().anyMatch(Flag::doubtful);
    }
}
