package stillroom.science.dosing;

/**
 * Why no dose is computed.
 *
 * @param kind of trouble
 * @param sentence with the figures that were compared and what would mend it
 */
public record Refusal(Kind kind, String sentence) {

    /** Kinds of trouble. */
    public enum Kind {
        /** A reading or target that no aqueous liquid has. */
        IMPOSSIBLE_PH,
        /** A mass of nothing, or less. */
        IMPOSSIBLE_MASS,
        /** Fewer readings than a slope needs. */
        TOO_FEW_READINGS,
        /** The pH moved against the corrector by more than three times the repeatability. */
        WRONG_WAY,
        /** Two readings at the same addition. */
        IDENTICAL_ADDITIONS,
        /** Readings that no one liquid can give. */
        CONTRADICTORY_READINGS,
        /** A sample heavier than what it was taken from. */
        SAMPLE_EXCEEDS_BULK,
        /** A corrector that holds neither acid nor base. */
        NO_STRENGTH,
        /** An acid where a base is needed, or the reverse. */
        WRONG_CORRECTOR,
        /** The corrector is too weak to bring the liquid there. */
        OUT_OF_REACH,
        /** A dose that the balance cannot see. */
        BELOW_BALANCE
    }
}
