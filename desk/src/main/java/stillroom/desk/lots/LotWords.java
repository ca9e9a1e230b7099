package stillroom.desk.lots;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Format;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Strength;

/** How a lot's state and dates read. */
public final class LotWords {
    /** Days ahead for which an expiry is said in days. */
    static final int SOON_DAYS = 60;

    private LotWords() {}

    /** What a strength may count; none is chosen at first. */
    public static List<Choice> bases() {
        List<Choice> bases = new ArrayList<>(List.of(new Choice("", "not said")));
        bases.addAll(Choice.of(Strength.Basis.class, LotWords::basis));
        return bases;
    }

    static String basis(Strength.Basis basis) {
        return switch (basis) {
            case ACTIVE -> "active matter";
            case DRY_RESIDUE -> "dry residue";
            case ASSAY_AS_IS -> "assay, as it is";
            case AS_ANHYDROUS -> "assay, as anhydrous";
            case AS_ACID -> "assay, as the acid";
        };
    }

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
