package stillroom.formulary.imports;

import java.util.List;
import java.util.Optional;

/**
 * Which card a name in a sheet means.
 *
 * @param materialKey empty where none is near enough
 * @param others further cards that it may mean, likest first
 */
public record Match(Kind kind, Optional<String> materialKey, List<String> others, String why) {
    /** How it was found. */
    public enum Kind {
        /** The maker decided so for this name before. */
        REMEMBERED,
        /** The name, the INCI name or the CAS number is the card's. */
        SAME,
        /** Several cards bear this name: the same INCI is not the same grade. */
        ONE_OF_SEVERAL,
        /** The name looks much like the card's. */
        ALIKE,
        NONE
    }

    public Match {
        others = List.copyOf(others);
    }

    static Match none(List<String> others) {
        return new Match(Kind.NONE, Optional.empty(), others, "No card bears such a name.");
    }

    /** Whether the maker should look at it. */
    public boolean isDoubtful() {
        return kind == Kind.ONE_OF_SEVERAL || kind == Kind.ALIKE;
    }
}
