package stillroom.formulary.material;

/**
 * One substance in a trade material.
 *
 * @param substance key into the substance table
 * @param massFraction share of the material
 * @param role why it is there, which decides whether a label names it
 */
public record Constituent(String substance, MassFraction massFraction, Role role) {
    /** Why a constituent is in the material. */
    public enum Role {
        /** Put there on purpose (actives, solvents, added preservatives): the label names it. */
        INGREDIENT,
        /** Brought along by making (salt in a betaine): counted in the pot, not named on the label. */
        IMPURITY,
        /** Part of a perfume or essential oil: named on the label only as an allergen above its threshold. */
        FRAGRANCE_PART
    }

    /** An intended constituent at an exactly known share. */
    public static Constituent exactly(String substance, double massFraction) {
        return new Constituent(substance, MassFraction.exactly(massFraction), Role.INGREDIENT);
    }
}
