package stillroom.formulary.hygiene;

/**
 * How long something may stand before it is filled or joined [h]. The usual figures are common practice, no source; the maker
 * sets own ones.
 *
 * @param phase a phase in its vessel, until it goes into another
 * @param bulk the whole bulk, until it is filled
 * @param slurry anything with water and nothing yet that preserves it
 * @param premix a premix made for later, until it is poured
 */
public record HoldLimits(int phase, int bulk, int slurry, int premix) {
    public static final HoldLimits USUAL = new HoldLimits(24, 336, 12, 72);

    public HoldLimits {
        if (phase < 1 || bulk < 1 || slurry < 1 || premix < 1) {
            throw new IllegalArgumentException("a hold time is at least 1 h");
        }
    }
}
