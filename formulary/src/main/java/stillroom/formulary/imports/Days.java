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
    private static final Pattern YEAR = Pattern.compile("20\\d{2}");
    private static final Pattern SHORT_YEAR = Pattern.compile("(\\d{1,2})([./-])(\\d{1,2})\\2(\\d{2})");
    private static final Pattern SHORT_MONTH = Pattern.compile("(\\d{1,2})[./-](\\d{2})");
    private static final Pattern MONTH_WORD =
            Pattern.compile("(?:(\\d{1,2})[.]?[ -/]?(?:de )?)?(\\p{L}{3,10})[.]?[ -/]?(?:de )?(\\d{4}|\\d{2})");
    /** The beginnings of the names of months in six languages. */
    private static final List<String> MONTHS = List.of(
            "jan|ene|gen",
            "feb|fev|fév",
            "mar|mär|mrz|maa|mrt",
            "apr|avr|abr",
            "may|mai|mag|mei|may",
            "jun|juin|giu",
            "jul|juil|lug",
            "aug|aou|aoû|ago",
            "sep|set",
            "oct|okt|ott",
            "nov",
            "dec|dez|déc|dic");

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
    Optional<LocalDate> read(String typed, List<Flag> flags) {
        String text = inFull(typed.strip());
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
        return turned.matches() ? lastOf(turned.group(1), turned.group(2), flags) : inWords(text, flags);
    }

    /** "Jan 2027", "3 mars 2027", or a year alone. */
    private static Optional<LocalDate> inWords(String text, List<Flag> flags) {
        if (YEAR.matcher(text).matches()) {
            flags.add(Flag.note("Of the year " + text + " the last day is taken."));
            return date(text, "12", "31");
        }
        Matcher words = MONTH_WORD.matcher(text.toLowerCase(java.util.Locale.ROOT));
        if (!words.matches()) {
            return Optional.empty();
        }
        String year = words.group(3).length() == 2 ? "20" + words.group(3) : words.group(3);
        for (int i = 0; i < MONTHS.size(); i++) {
            if (words.group(2).matches("(" + MONTHS.get(i) + ").*")) {
                String month = String.valueOf(i + 1);
                return words.group(1) == null ? lastOf(year, month, flags) : date(year, month, words.group(1));
            }
        }
        return Optional.empty();
    }

    /** With the century. */
    private static String inFull(String typed) {
        Matcher day = SHORT_YEAR.matcher(typed);
        if (day.matches()) {
            return day.group(1) + day.group(2) + day.group(3) + day.group(2) + "20" + day.group(4);
        }
        Matcher month = SHORT_MONTH.matcher(typed);
        return month.matches() ? month.group(1) + "/20" + month.group(2) : typed;
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
        if (!year.matches("(19|20)\\d{2}")) {
            return Optional.empty();
        }
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
