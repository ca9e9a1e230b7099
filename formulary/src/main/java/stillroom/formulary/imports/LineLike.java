package stillroom.formulary.imports;

import java.util.List;

/** Tells rows that look like lines of some formula, whatever the columns mean: a name in one cell and a figure in another. */
final class LineLike {
    private LineLike() {}

    /** The name in such a row; empty where the row is none. */
    static String name(List<Cell> cells, Terms terms) {
        String name = "";
        boolean figure = false;
        for (Cell cell : cells) {
            boolean amount = FigureReading.read(cell, terms.mark()).isAmount();
            figure = figure || amount;
            if (name.isEmpty()
                    && !amount
                    && cell.number().isEmpty()
                    && cell.text().matches(".*\\p{L}{3}.*")) {
                name = cell.text();
            }
        }
        boolean other = RowWords.isTotal(name)
                || RowWords.isFact(name)
                || Talk.is(name)
                || name.endsWith(":") && !terms.knownName().test(name.substring(0, name.length() - 1));
        return figure && !other ? name : "";
    }
}
