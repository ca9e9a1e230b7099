package stillroom.formulary.batch;

import java.time.Duration;
import java.util.List;
import stillroom.formulary.batch.BatchEvent.Poured;
import stillroom.formulary.batch.BatchEvent.ReadAgain;

/**
 * Whether a weight was looked at twice, and by whom.
 *
 * @param by who looked the second time, empty where nobody did
 */
public record PourCheck(Kind kind, String by) {
    /** How long the same person has to wait for a second look to count. Common practice, no source. */
    public static final Duration OWN_SECOND_LOOK = Duration.ofSeconds(60);

    /** What the second look was worth. */
    public enum Kind {
        NOT_CHECKED("not checked"),
        SELF_CHECKED("self-checked"),
        CHECKED("checked"),
        DISAGREES("read differently the second time");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** The newest second look decides. */
    static PourCheck of(Logged<Poured> pour, List<Logged<ReadAgain>> looks) {
        String named = pour.event().checkedBy();
        PourCheck check = named.isBlank() || named.equals(pour.by())
                ? new PourCheck(Kind.NOT_CHECKED, "")
                : new PourCheck(Kind.CHECKED, named);
        for (Logged<ReadAgain> look : looks) {
            if (look.event().entry() == pour.number()) {
                check = worth(pour, look, check);
            }
        }
        return check;
    }

    private static PourCheck worth(Logged<Poured> pour, Logged<ReadAgain> look, PourCheck before) {
        if (!look.event().shown().equals(pour.event().mass())) {
            return new PourCheck(Kind.DISAGREES, look.by());
        }
        if (!look.by().equals(pour.by())) {
            return new PourCheck(Kind.CHECKED, look.by());
        }
        boolean lateEnough = Duration.between(pour.at(), look.at()).compareTo(OWN_SECOND_LOOK) >= 0;
        return lateEnough ? new PourCheck(Kind.SELF_CHECKED, look.by()) : before;
    }
}
