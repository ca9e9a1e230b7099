package stillroom.formulary.imports;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the days of a column. Where 03/04 can be read in two ways, another day of the column may decide it.
 *
 * @param dayFirst what the rest of the column shows; empty where nothing does
 */
record Days(Optional<Boolean> dayFirst) {
    private static final Pattern POINTS = Pattern.compile("(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})");
    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})(?:T.*| .*)?");
    private static final Pattern TWO_WAYS = Pattern.compile("(\\d{1,2})[/-](\\d{1,2})[/-](\\d{4})");
    private static final Pattern MONTH = Pattern.compile("(\\d{1,2})[./-](\\d{4})");
    private static final Pattern YEAR_MONTH = Pattern.compile("(\\d{4})[./-](\\d{1,2})");

    static Days of(List<String> column) {
        boolean day = column.stream().anyMatch(text -> isOver(text, 1));
        boolean month = column.stream().anyMatch(text -> isOver(text, 2));
        return new Days(day == month ? Optional.empty() : Optional.of(day));
    }

    private static boolean isOver(String text, int group) {
        Matcher day = TWO_WAYS.matcher(text);
        return day.matches() && Integer.parseInt(day.group(group)) > 12;
    }

    /** The day that a text says; doubts are added to the flags. */
    Optional<LocalDate> read(String text, List<Flag> flags) {
        Matcher year = YEAR_FIRST.matcher(text);
        if (year.matches()) {
            return date(year.group(1), year.group(2), year.group(3));
        }
        Matcher points = POINTS.matcher(text);
        if (points.matches()) {
            return date(points.group(3), points.group(2), points.group(1));
        }
        Matcher two = TWO_WAYS.matcher(text);
        if (two.matches()) {
            return twoWays(two, flags);
        }
        Matcher month = MONTH.matcher(text);
        if (month.matches()) {
            return lastOf(month.group(2), month.group(1), flags);
        }
        Matcher turned = YEAR_MONTH.matcher(text);
        return turned.matches() ? lastOf(turned.group(1), turned.group(2), flags) : Optional.empty();
    }

    private Optional<LocalDate> twoWays(Matcher two, List<Flag> flags) {
        int one = Integer.parseInt(two.group(1));
        int other = Integer.parseInt(two.group(2));
        if (one <= 12 && other <= 12 && one != other && dayFirst.isEmpty()) {
            flags.add(Flag.doubt("\"" + two.group() + "\" is taken as day, month, year."));
        }
        boolean first = one > 12 || other <= 12 && dayFirst.orElse(true);
        return first ? date(two.group(3), two.group(2), two.group(1)) : date(two.group(3), two.group(1), two.group(2));
    }

    private static Optional<LocalDate> lastOf(String year, String month, List<Flag> flags) {
        flags.add(Flag.note("The month's last day is taken."));
        return date(year, month, "1").map(day -> day.withDayOfMonth(day.lengthOfMonth()));
    }

    private static Optional<LocalDate> date(String year, String month, String day) {
        try {
            return Optional.of(LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day)));
        } catch (DateTimeException none) {
            return Optional.empty();
        }
    }
}
