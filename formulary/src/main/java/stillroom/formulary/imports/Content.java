package stillroom.formulary.imports;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What the cells of a column are, counted.
 *
 * @param filled cells that hold anything
 * @param figures of these, amounts
 * @param phases of these, single letters and the like
 * @param units of these, unit words
 * @param words of these, anything else
 * @param serial whether they count 1, 2, 3
 */
record Content(int place, int filled, int figures, int phases, int units, int words, boolean serial) {
    static Content of(Grid grid, int place, int first, int last) {
        List<Cell> cells = IntStream.rangeClosed(first, last)
                .mapToObj(row -> grid.cell(row, place))
                .filter(cell -> !cell.isBlank())
                .toList();
        int figures = (int) cells.stream().filter(Content::isFigure).count();
        int phases = (int) cells.stream()
                .filter(cell -> cell.number().isEmpty() && RowWords.isPhaseAlone(cell.text()))
                .count();
        int units = (int) cells.stream()
                .filter(cell ->
                        cell.number().isEmpty() && UnitWords.of(cell.text()).isPresent())
                .count();
        int words = (int) cells.stream()
                .filter(cell -> cell.number().isEmpty()
                        && !isFigure(cell)
                        && cell.text().length() > 2)
                .count();
        return new Content(place, cells.size(), figures, phases, units, words, isSerial(cells));
    }

    private static boolean isFigure(Cell cell) {
        return FigureReading.read(cell, Optional.empty()).isAmount();
    }

    private static boolean isSerial(List<Cell> cells) {
        List<String> numbers = cells.stream()
                .map(cell -> cell.text().replaceAll("[.)]?(0+)?$", cell.text().matches(".*[.,]0+$") ? "" : "$1"))
                .filter(text -> text.matches("\\d{1,3}"))
                .toList();
        if (numbers.size() < 3) {
            return false;
        }
        return IntStream.range(1, numbers.size())
                .allMatch(i -> Integer.parseInt(numbers.get(i)) == Integer.parseInt(numbers.get(i - 1)) + 1);
    }

    boolean isMostlyFigures() {
        return figures > 0 && figures * 5 >= filled * 3 && !serial;
    }

    boolean isMostlyPhases() {
        return phases > 0 && phases * 4 >= filled * 3;
    }

    /** 1, 1, 2, 2, 2, 3 beside the lines: they group the lines. */
    static boolean counts(Grid grid, int place, int first, int last) {
        List<String> texts = IntStream.rangeClosed(first, last)
                .mapToObj(row -> grid.cell(row, place).text())
                .filter(text -> !text.isEmpty())
                .toList();
        boolean rising = texts.size() > 3
                && texts.get(0).matches("[1Aa]")
                && IntStream.range(1, texts.size())
                        .allMatch(i -> texts.get(i).matches("[1-9A-Ha-h]")
                                && texts.get(i).charAt(0) - texts.get(i - 1).charAt(0) >= 0
                                && texts.get(i).charAt(0) - texts.get(i - 1).charAt(0) <= 1);
        long kinds = texts.stream().distinct().count();
        return rising && kinds >= 2 && kinds < texts.size();
    }

    boolean isUnits() {
        return units > 0 && units * 5 >= filled * 4;
    }
}
