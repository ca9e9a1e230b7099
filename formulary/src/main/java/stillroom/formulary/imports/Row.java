package stillroom.formulary.imports;

import java.util.List;

/**
 * A row of a table with what it is.
 *
 * @param phase what its column of phases, or the row itself, says of the phase; empty where nothing does
 * @param names of the ingredient, first the one that is shown
 * @param text all that stands in it, for titles and notes
 * @param figures one for each column of amounts, in their order
 */
record Row(
        int place,
        RowKind kind,
        String phase,
        List<String> names,
        String cas,
        String note,
        String text,
        List<Figure> figures,
        List<Flag> flags) {
    Row {
        names = List.copyOf(names);
        figures = List.copyOf(figures);
        flags = List.copyOf(flags);
    }

    boolean hasAmount() {
        return figures.stream().anyMatch(Figure::isAmount);
    }
}
