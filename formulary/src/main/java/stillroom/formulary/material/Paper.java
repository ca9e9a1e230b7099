package stillroom.formulary.material;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A document on a material, a lot or a product: that it is there, from when, and when it is to be looked at again.
 *
 * @param title as one would ask for it
 * @param dated day that stands on it
 * @param reviewBy day by which a newer one is asked for
 * @param file SHA-256 of the kept file, where one is kept
 * @param fileName as it was called, empty without a file
 * @param note such as the result of a test in a sentence
 */
public record Paper(
        Kind kind,
        String title,
        Optional<LocalDate> dated,
        Optional<LocalDate> reviewBy,
        Optional<String> file,
        String fileName,
        String note) {
    /** What a document is. */
    public enum Kind {
        SAFETY_SHEET("safety data sheet"),
        SPECIFICATION("specification"),
        CERTIFICATE("certificate of analysis"),
        STATEMENT("statement"),
        STABILITY_STUDY("stability study"),
        CHALLENGE_TEST("challenge test"),
        ASSESSMENT("safety assessment"),
        OTHER("other");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public boolean dueBy(LocalDate day) {
        return reviewBy.filter(review -> !review.isAfter(day)).isPresent();
    }
}
