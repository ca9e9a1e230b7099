package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;

/**
 * One cell of a sheet, as the file holds it.
 *
 * @param text what stands there, blanks at its ends taken off; empty for an empty cell
 * @param number the figure where the file holds one and not a text; decimal mark and separators are then no question
 */
public record Cell(String text, Optional<BigDecimal> number, Set<Trait> traits) {
    public static final Cell EMPTY = new Cell("", Optional.empty(), Set.of());

    /** What else is known of a cell. */
    public enum Trait {
        /** The number is shown times 100, with a per cent sign. */
        SHOWN_AS_PERCENT,
        /** Computed by the spreadsheet; the value is the one that was saved last. */
        COMPUTED,
        /** Shown as a day, which a range such as 1-2 may have turned into. */
        DAY,
        /** The spreadsheet could not compute it. */
        FAILED,
        /** In a row or column that the sheet hides. */
        HIDDEN,
        /** Repeated from the first cell of cells that are merged downwards. */
        MERGED
    }

    public Cell {
        text = text.replace('\u00a0', ' ')
                .replace('\u202f', ' ')
                .replace('\u2009', ' ')
                .strip();
        boolean bold = text.length() > 4 && text.startsWith("**") && text.endsWith("**");
        text = bold ? text.substring(2, text.length() - 2).strip() : text;
        traits = Set.copyOf(traits);
    }

    public static Cell of(String text) {
        return text.isBlank() ? EMPTY : new Cell(text, Optional.empty(), Set.of());
    }

    public boolean isBlank() {
        return text.isEmpty();
    }

    public boolean is(Trait trait) {
        return traits.contains(trait);
    }
}
