package stillroom.formulary.material;

/** The shelf on which a maker looks for a material; one per card. */
public enum Family {
    WATER,
    SURFACTANT,
    HUMECTANT,
    OIL,
    BUTTER,
    WAX,
    EMULSIFIER,
    THICKENER,
    PRESERVATIVE,
    ACID,
    BASE,
    CHELATOR,
    ACTIVE,
    COLOURANT,
    FRAGRANCE,
    SALT,
    SOLVENT,
    CONDITIONER,
    POWDER,
    OTHER
}
