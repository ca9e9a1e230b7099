package stillroom.formulary.plan;

import java.util.Map;
import java.util.Optional;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.quantity.Percent;

/**
 * How far a weighing may be off, as a share of its line. The defaults are common practice, no source.
 *
 * @param narrow preservatives, actives and colour
 * @param usual all others
 * @param wide the line that fills up to 100
 * @param byMaterial the maker's own for single materials, by their key
 */
public record Tolerances(Percent narrow, Percent usual, Percent wide, Map<String, Percent> byMaterial) {
    public static final Tolerances USUAL = new Tolerances(Percent.of("2"), Percent.of("5"), Percent.of("10"), Map.of());

    public Tolerances {
        byMaterial = Map.copyOf(byMaterial);
    }

    Percent of(ResolvedLine line, Optional<Material> card) {
        return of(line.materialKey(), line.toHundred(), card);
    }

    /** The tolerance of a line [% of the line]. */
    public Percent of(String materialKey, boolean toHundred, Optional<Material> card) {
        Percent own = byMaterial.get(materialKey);
        if (own != null) {
            return own;
        }
        return toHundred ? wide : card.map(m -> of(m.family())).orElse(usual);
    }

    private Percent of(Family family) {
        return switch (family) {
            case PRESERVATIVE, ACTIVE, COLOURANT -> narrow;
            case WATER,
                    SURFACTANT,
                    HUMECTANT,
                    OIL,
                    BUTTER,
                    WAX,
                    EMULSIFIER,
                    THICKENER,
                    ACID,
                    BASE,
                    CHELATOR,
                    FRAGRANCE,
                    SALT,
                    SOLVENT,
                    CONDITIONER,
                    POWDER,
                    OTHER -> usual;
        };
    }
}
