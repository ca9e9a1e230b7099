package stillroom.formulary.material;

import stillroom.formulary.quantity.PercentRange;

/**
 * How strong a trade material is, and what that figure counts: active matter is not dry residue.
 *
 * @param percent range of the figure [% w/w of the material]
 * @param basis what the figure counts; a figure without its basis is not stored
 * @param of INCI name of what is counted, such as "Cocamidopropyl Betaine"
 */
public record Strength(PercentRange percent, Basis basis, String of) {
    /** What a strength counts. */
    public enum Basis {
        ACTIVE,
        DRY_RESIDUE,
        ASSAY_AS_IS,
        AS_ANHYDROUS,
        AS_ACID
    }
}
