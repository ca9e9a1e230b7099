package stillroom.ledger.exchange;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.label.LabelSheet;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Substance;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.Percent;

/**
 * A formula as a file that stands by itself. The format is documented in {@code docs/file-format.md}.
 *
 * <p>Lines and constituents name their material or substance as the file does: by key, or as {@code inci:NAME} or
 * {@code cas:NUMBER}. {@link Catalogue} leads such names to cards.
 *
 * @param name of the product
 * @param note may be empty
 * @param made what is known of a batch made from it, where the file says so
 * @param label what stands on the label besides the formula, where the file says so
 * @param materials its own cards; they stand before those of the library
 * @param substances its own substances
 * @param kept what this version does not know
 */
public record FormulaFile(
        String name,
        String note,
        Brief brief,
        Formula formula,
        Optional<Made> made,
        Optional<LabelSheet> label,
        List<Material> materials,
        List<Substance> substances,
        List<Kept> kept) {
    /** The version of the format that this program writes. */
    public static final int FORMAT = 1;

    /** Prefix of a name by which a line or constituent is to be looked up. */
    public static final String BY_INCI = "inci:";

    public static final String BY_CAS = "cas:";

    /**
     * What was found of a batch.
     *
     * @param ph as read
     * @param waterLost by evaporation [% of what was added]
     */
    public record Made(Optional<Interval> ph, Percent waterLost) {}

    public FormulaFile {
        materials = List.copyOf(materials);
        substances = List.copyOf(substances);
        kept = List.copyOf(kept);
    }

    /** A file of a formula whose cards all stand in the library. */
    public static FormulaFile of(String name, String note, Brief brief, Formula formula) {
        return new FormulaFile(
                name, note, brief, formula, Optional.empty(), Optional.empty(), List.of(), List.of(), List.of());
    }
}
