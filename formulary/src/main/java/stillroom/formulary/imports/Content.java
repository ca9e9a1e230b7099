package stillroom.formulary.imports;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What the cells of a column are, counted over the rows that look like lines.
 *
 * @param rows how many rows those are
 * @param filled cells that hold anything
 * @param figures of these, amounts
 * @param phases of these, single letters and the like
 * @param units of these, unit words
 * @param words of these, anything else
 * @param known of these, names of materials
 * @param codes of these, numbers of articles and the like
 * @param distinct different texts
 * @param serial whether they count 1, 2, 3
 * @param runs whether every text stands in rows one after the other, the first in the first row
 */
record Content(
        int place,
        int rows,
        int filled,
        int figures,
        int phases,
        int units,
        int words,
        int known,
        int codes,
        int distinct,
        boolean serial,
        boolean runs) {
    static Content of(Table table, Terms terms, List<Integer> rows, int place) {
        List<Cell> all = rows.stream().map(row -> table.grid().cell(row, place)).toList();
        List<Cell> cells = all.stream().filter(cell -> !cell.isBlank()).toList();
        List<String> texts = cells.stream()
                .filter(cell -> cell.number().isEmpty() && !isFigure(cell))
                .map(Cell::text)
                .toList();
        return new Content(
                place,
                rows.size(),
                cells.size(),
                (int) cells.stream().filter(Content::isFigure).count(),
                (int) texts.stream().filter(RowWords::isPhaseForCertain).count(),
                (int) texts.stream()
                        .filter(text -> UnitWords.of(text).isPresent())
                        .count(),
                (int) texts.stream().filter(text -> text.length() > 2).count(),
                (int) texts.stream().filter(terms.knownName()).count(),
                (int) cells.stream().filter(Content::isCode).count(),
                (int) cells.stream().map(Cell::text).distinct().count(),
                isSerial(cells),
                isRuns(all));
    }

    private static boolean isFigure(Cell cell) {
        return FigureReading.read(cell, Optional.empty()).isAmount();
    }

    /** "RM-103", "10422": letters and digits without a blank, or a whole number too large for an amount. */
    private static boolean isCode(Cell cell) {
        return cell.text().matches("\\d{5,}|(?=.*\\d)(?=.*\\p{Lu})[\\p{Lu}\\d][\\p{Lu}\\d./-]{2,}");
    }

    private static boolean isSerial(List<Cell> cells) {
        List<String> numbers = cells.stream()
                .map(cell -> cell.text().replaceAll("[.)]?(0+)?$", cell.text().matches(".*[.,]0+$") ? "" : "$1"))
                .filter(text -> text.matches("\\d{1,3}"))
                .toList();
        if (numbers.size() < 3 || numbers.size() * 5 < cells.size() * 4) {
            return false;
        }
        return IntStream.range(1, numbers.size())
                .allMatch(i -> Integer.parseInt(numbers.get(i)) == Integer.parseInt(numbers.get(i - 1)) + 1);
    }

    private static boolean isRuns(List<Cell> cells) {
        Set<String> seen = new HashSet<>();
        String now = "";
        for (Cell cell : cells) {
            if (!cell.isBlank() && !cell.text().equals(now)) {
                now = cell.text();
                if (!seen.add(now)) {
                    return false;
                }
            }
        }
        return seen.size() > 1 && !cells.get(0).isBlank();
    }

    boolean isMostlyFigures() {
        return figures > 0 && figures * 5 >= filled * 3 && !serial;
    }

    /** Single letters, "Phase 1" and the like, each for the lines of one phase. */
    boolean isMostlyPhases() {
        return phases > 0 && phases * 4 >= filled * 3 && !isUnits();
    }

    /** Words or small numbers, few for many lines, each over lines one after the other: they group the lines. */
    boolean isGrouping() {
        return runs && known == 0 && distinct * 2 <= rows;
    }

    boolean isUnits() {
        return units > 0 && units * 5 >= filled * 4;
    }

    boolean isCodes() {
        return codes > 1 && codes * 5 >= filled * 4;
    }

    /** Names of materials that exist, for a good part of the lines. */
    boolean isKnown() {
        return known > 1 && known * 2 >= filled && filled * 2 >= rows;
    }

    /** A text of its own for nearly every line. */
    boolean isOwn() {
        return words * 5 >= rows * 4 && distinct * 5 >= filled * 4;
    }

    /** A text for every line, no two the same. */
    boolean isEachOwn() {
        return rows > 4 && words == rows && distinct == rows;
    }

    /** 1, 1, 2, 2, 2, 3 beside the lines: they group the lines. */
    static boolean counts(Grid grid, int place, List<Integer> rows) {
        List<String> texts = rows.stream()
                .map(row -> grid.cell(row, place).text())
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
}
