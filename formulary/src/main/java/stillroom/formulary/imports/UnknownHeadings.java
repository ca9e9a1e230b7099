package stillroom.formulary.imports;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Headings in words that are not known, told from their place: words above figures and above names, line after line. */
record UnknownHeadings(Grid grid, Terms terms) {
    private static final int LONGEST = 32;
    private static final int LOOKED_AT = 8;

    List<Head> at(int row) {
        if (terms.guidance().rows().containsKey(row) || !isWordsOnly(row)) {
            return List.of();
        }
        List<Integer> lines = IntStream.rangeClosed(row + 1, row + LOOKED_AT)
                .filter(below -> isLineUnder(row, below))
                .boxed()
                .toList();
        boolean near = lines.stream().anyMatch(below -> below <= row + 4);
        return lines.size() >= 2 && near
                ? List.of(new Head(row, 1, new Heads(grid, terms).read(row, false), ""))
                : List.of();
    }

    private boolean isWordsOnly(int row) {
        List<Cell> cells = filled(row);
        return cells.size() >= 2
                && cells.stream()
                        .allMatch(cell -> cell.number().isEmpty()
                                && cell.text().length() <= LONGEST
                                && !FigureReading.text(cell.text(), Optional.empty())
                                        .isAmount()
                                && !terms.knownName().test(cell.text())
                                && !Talk.is(cell.text()))
                && !RowWords.isPhaseAlone(cells.get(0).text())
                && !RowWords.isFact(cells.get(0).text())
                && RowWords.title(cells.get(0).text()).isEmpty()
                && !RowWords.isTotal(cells.get(0).text());
    }

    private List<Cell> filled(int row) {
        return row < grid.height()
                ? grid.rows().get(row).stream().filter(cell -> !cell.isBlank()).toList()
                : List.of();
    }

    /** A row with a figure under one of the headings and a name under another, most of it under headings. */
    private boolean isLineUnder(int head, int row) {
        boolean figure = false;
        boolean name = false;
        int under = 0;
        for (int place = 0; place < grid.width(row); place++) {
            Cell cell = grid.cell(row, place);
            if (!cell.isBlank() && !grid.cell(head, place).isBlank()) {
                boolean amount = FigureReading.read(cell, terms.mark()).isAmount();
                figure = figure || amount;
                name = name || !amount && cell.text().matches(".*\\p{L}{3}.*");
                under++;
            }
        }
        return figure && name && under * 3 >= filled(row).size() * 2;
    }
}
