package stillroom.ledger.imports;

import java.util.List;
import java.util.function.Function;
import stillroom.formulary.imports.Grid;

/** What came of opening a file: its sheets, or one sentence why there are none. */
public sealed interface Opened {
    /** @param sheets at least one */
    record Sheets(List<Grid> sheets) implements Opened {
        public Sheets {
            sheets = List.copyOf(sheets);
        }
    }

    /** @param sentence why, and what the maker can do */
    record Refused(String sentence) implements Opened {}

    /** One function per case. */
    default <T> T match(Function<Sheets, T> sheets, Function<Refused, T> refused) {
        return this instanceof Sheets opened ? sheets.apply(opened) : refused.apply((Refused) this);
    }
}
