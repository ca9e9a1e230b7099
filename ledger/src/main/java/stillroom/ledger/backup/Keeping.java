package stillroom.ledger.backup;

import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.temporal.IsoFields;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * Which automatic copies are kept: the newest of each of the last days, weeks and months that have one. Periods without a copy
 * are not counted, so that a workshop that rests for a year keeps what it had.
 */
public record Keeping(int days, int weeks, int months) {
    public static final Keeping USUAL = new Keeping(7, 5, 12);

    /** Those that may go. The newest copy of all is never among them. */
    public List<LocalDateTime> superfluous(Collection<LocalDateTime> copies) {
        List<LocalDateTime> newestFirst =
                copies.stream().sorted(Comparator.reverseOrder()).toList();
        Set<LocalDateTime> kept = new HashSet<>();
        keep(kept, newestFirst, LocalDateTime::toLocalDate, Math.max(1, days));
        keep(kept, newestFirst, Keeping::week, weeks);
        keep(kept, newestFirst, YearMonth::from, months);
        return newestFirst.stream().filter(copy -> !kept.contains(copy)).toList();
    }

    private static String week(LocalDateTime time) {
        return time.get(IsoFields.WEEK_BASED_YEAR) + "-" + time.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
    }

    private static <P> void keep(
            Set<LocalDateTime> kept, List<LocalDateTime> newestFirst, Function<LocalDateTime, P> period, int most) {
        Set<P> seen = new HashSet<>();
        for (LocalDateTime copy : newestFirst) {
            if (seen.size() < most && seen.add(period.apply(copy))) {
                kept.add(copy);
            }
        }
    }
}
