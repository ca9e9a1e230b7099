package stillroom.desk.lots;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import stillroom.desk.shell.Format;
import stillroom.formulary.material.Lot;

/** How a lot's state and dates read. */
final class LotWords {
    /** Days ahead for which an expiry is said in days. */
    static final int SOON_DAYS = 60;

    private LotWords() {}

    static String state(Lot.State state) {
        return switch (state) {
            case RELEASED -> "may be used";
            case QUARANTINE -> "in quarantine";
            case USED_UP -> "used up";
        };
    }

    /** The best-before day, and how near it is. */
    static String expiry(Lot lot, LocalDate today) {
        return lot.expires().map(day -> Format.day(day) + nearness(day, today)).orElse("no date");
    }

    private static String nearness(LocalDate day, LocalDate today) {
        long days = ChronoUnit.DAYS.between(today, day);
        if (days < 0) {
            return ", expired " + days(-days) + " ago";
        }
        if (days == 0) {
            return ", today is the last day";
        }
        return days <= SOON_DAYS ? ", in " + days(days) : "";
    }

    private static String days(long days) {
        return days == 1 ? "1 day" : days + " days";
    }
}
