package stillroom.formulary.batch;

import stillroom.formulary.quantity.Grams;

/**
 * Something that left a vessel.
 *
 * @param entry number of the log entry
 * @param what in words: what the sample was for, which pack, which batch
 * @param said mass that the log states [g]
 * @param mixture what that was, by the book; less than said where the book held less
 */
public record Drawn(int entry, Kind kind, String vessel, String what, Grams said, Mixture mixture) {
    /** Where it went. */
    public enum Kind {
        SAMPLE,
        FILL,
        RETAINED,
        HANDED_OVER;

        /** Whether it is still product of this batch. */
        public boolean isProduct() {
            return this == FILL || this == RETAINED;
        }
    }
}
