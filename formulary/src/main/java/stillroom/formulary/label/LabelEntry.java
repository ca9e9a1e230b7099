package stillroom.formulary.label;

import java.util.List;
import stillroom.formulary.material.MassFraction;

/**
 * One name of the ingredient list.
 *
 * @param name as printed
 * @param substances keys of what it sums
 * @param share as added, over all materials
 * @param block where the law lets it stand
 */
public record LabelEntry(String name, List<String> substances, MassFraction share, Block block) {
    /** The blocks of an ingredient list, in order. */
    public enum Block {
        /** In descending order. */
        ORDERED,
        /** Small enough for any order after the ordered ones. */
        FREE,
        /** Perfume allergens that the law wants by name; any order, we put them last. */
        ALLERGEN,
        /** Colourants: any order after all others. */
        COLOURANT
    }

    public LabelEntry {
        substances = List.copyOf(substances);
    }
}
