package stillroom.formulary.imports;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tells the decimal mark of a sheet from the numbers in it that can be read in one way only. */
final class MarkGuess {
    private static final int LONGEST = 60;
    private static final int CLEARLY_MORE = 3;
    private static final Pattern NUMBER =
            Pattern.compile("(?<![\\p{L}\\d.,])\\d[\\d' ]*[.,][\\d.,]*\\d(?![\\d.,]|-\\p{L}|\\s?[-/.]\\s?\\d)");

    private MarkGuess() {}

    /** What the maker said, or what clearly most numbers tell. */
    static Optional<Mark> of(Grid grid, Guidance guidance) {
        if (guidance.mark().isPresent()) {
            return guidance.mark();
        }
        int points = count(grid, Mark.POINT);
        int commas = count(grid, Mark.COMMA);
        if (points > CLEARLY_MORE * commas) {
            return Optional.of(Mark.POINT);
        }
        return commas > CLEARLY_MORE * points ? Optional.of(Mark.COMMA) : Optional.empty();
    }

    private static int count(Grid grid, Mark mark) {
        return (int) grid.rows().stream()
                .flatMap(row -> row.stream())
                .filter(cell -> cell.number().isEmpty() && cell.text().length() <= LONGEST)
                .flatMap(cell -> NUMBER.matcher(cell.text()).results())
                .filter(found -> Numeral.evidence(found.group()).equals(Optional.of(mark)))
                .count();
    }

    /** Whether a sheet holds texts that could be thousands or decimals. */
    static boolean isAsked(Grid grid) {
        return grid.rows().stream()
                .flatMap(row -> row.stream())
                .filter(cell -> cell.number().isEmpty())
                .anyMatch(cell -> {
                    Matcher number = NUMBER.matcher(cell.text());
                    return number.find() && Numeral.isTwoWays(number.group());
                });
    }
}
