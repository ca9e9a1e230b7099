package stillroom.formulary.imports;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** What looks wrong about the name of a line. */
final class NameDoubts {
    private static final Pattern BROKEN = Pattern.compile(".*(\uFFFD|Ã[\u0080-\u00BF©¨¼¶¤±³]|â€|Â[\u00A0-\u00BF]).*");

    private NameDoubts() {}

    /** @param seen names of the phase so far; the name is added */
    static List<Flag> of(Row row, String phase, Set<String> seen) {
        List<Flag> flags = new ArrayList<>();
        String name = row.names().isEmpty() ? "" : row.names().get(0);
        if (name.isEmpty()) {
            flags.add(Flag.doubt("There is an amount without a name."));
        } else if (!seen.add(phase + "\n" + Folding.of(name))) {
            flags.add(Flag.doubt("This name stands in the phase twice."));
        }
        if (row.names().stream().anyMatch(one -> BROKEN.matcher(one).matches())) {
            flags.add(Flag.doubt("Some letters of the name were lost or changed before the file came here."));
        }
        return flags;
    }
}
