package stillroom.formulary.label;

/**
 * How a market orders and names an ingredient list.
 *
 * @param floatsAtOnePercent whether an ingredient at exactly 1 % may stand in any order: in the United States the free
 *     block is "1 percent or less" (21 CFR 701.3(f), from memory), in the Union "less than 1 %" (article 19(1)(g))
 * @param allergens whether perfume allergens are named
 * @param nano whether nano materials carry the suffix
 */
record MarketForm(boolean floatsAtOnePercent, boolean allergens, boolean nano) {
    static MarketForm of(String market) {
        return market.equals("US") ? new MarketForm(true, false, false) : new MarketForm(false, true, true);
    }

    /** Whether a share may stand in the free block. */
    boolean isFree(double massFraction) {
        double dust = 1e-12;
        return floatsAtOnePercent ? massFraction <= 0.01 + dust : massFraction < 0.01 - dust;
    }
}
