package stillroom.formulary.rule;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Where a rule row was read.
 *
 * @param sourceKey key into the bibliography
 * @param paragraph entry, article or table in that source
 * @param readOn the day on which a person or this project read the text; empty means unread, and an unread row may
 *     only ask for a look, never say "within the limit"
 */
public record Citation(String sourceKey, String paragraph, Optional<LocalDate> readOn) {
    /** As a finding prints it: paragraph, source and reading. */
    public String words() {
        String reading = readOn.map(day -> "read " + day).orElse("not read in the legal text");
        return paragraph + " (" + sourceKey + ", " + reading + ")";
    }
}
