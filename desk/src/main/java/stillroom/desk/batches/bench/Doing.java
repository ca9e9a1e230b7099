package stillroom.desk.batches.bench;

import java.util.Locale;
import java.util.Optional;

/** What a person may do at the bench; the word in the address and in forms is the constant in lower case. */
enum Doing {
    READY("Another vessel"),
    WEIGH("Weigh"),
    SETTLE("Settle"),
    OUTSIDE("pH outside its band"),
    BACK("Take back"),
    STEP("Step of the procedure"),
    COMBINE("Combine"),
    READ("Reading"),
    CORRECT("Correction"),
    GROSS("Weigh the vessel"),
    SAMPLE("Take a sample"),
    REST("Let it rest"),
    LOOK("Look again"),
    TIMER("Timer"),
    NOTE("Note"),
    INSTEAD("Another material was poured"),
    ASTRAY("Poured by mistake"),
    LOTS("Name the lots"),
    GIVEUP("Give the batch up"),
    STRIKE("Strike an entry"),
    AGAIN("Read again"),
    DONE("What next");

    private final String words;

    Doing(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Doing> of(String key) {
        for (Doing doing : values()) {
            if (doing.key().equals(key)) {
                return Optional.of(doing);
            }
        }
        return Optional.empty();
    }
}
