package stillroom.ledger.seal;

import java.util.List;
import java.util.Optional;

/**
 * Whether a batch's log, and what it refers to, still is what it was.
 *
 * @param entries in the log
 * @param headHash of the newest entry, recomputed; empty for an empty log
 * @param matched number of the entry whose hash is the one asked about; none where none was asked or none fits
 * @param covered how many things outside the log were compared
 * @param altered what is not what it was, one sentence each
 */
public record Verdict(
        String batch, int entries, String headHash, Optional<Integer> matched, int covered, List<String> altered) {
    public Verdict {
        altered = List.copyOf(altered);
    }

    public boolean sound() {
        return altered.isEmpty();
    }
}
