package stillroom.science.dosing;

/** Where a reading was taken. */
public enum Vessel {
    /** A weighed sample that is thrown away afterwards. */
    SAMPLE,
    /** The whole that is to be corrected. */
    BULK
}
