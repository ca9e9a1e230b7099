package stillroom.desk.shell;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.Percent;

/** How figures and times are written on screen and paper. Rounding happens here and nowhere else. */
public final class Format {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("d MMM uuuu, HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    private Format() {}

    /** A solved figure with so many decimals, half even; a true minus sign. */
    public static String figure(double value, int decimals) {
        return decimal(BigDecimal.valueOf(value), decimals);
    }

    /** An exact figure with so many decimals, half even. */
    public static String decimal(BigDecimal value, int decimals) {
        BigDecimal rounded = value.setScale(decimals, RoundingMode.HALF_EVEN);
        return (rounded.signum() < 0 ? "\u2212" : "") + rounded.abs().toPlainString();
    }

    /** A solved figure of any size with three significant digits, no exponent. */
    public static String significant(double value) {
        return value == 0
                ? "0"
                : new BigDecimal(value)
                        .round(new MathContext(3))
                        .stripTrailingZeros()
                        .toPlainString();
    }

    /** A percentage with at least so many decimals; a longer exact figure is shown whole up to six decimals. */
    public static String percent(Percent percent, int decimals) {
        int own = Math.max(0, percent.value().stripTrailingZeros().scale());
        return decimal(percent.value(), Math.min(6, Math.max(own, decimals)));
    }

    /** A mass with as many decimals as its balance shows. */
    public static String grams(Grams mass, Grams step) {
        return decimal(
                mass.value(), Math.max(0, step.value().stripTrailingZeros().scale()));
    }

    /** A mass as it is, no zeros added. */
    public static String grams(Grams mass) {
        return decimal(mass.value(), Math.max(0, mass.value().scale()));
    }

    /** A reckoned mass: at most three decimals, no zeros added. */
    public static String reckonedGrams(Grams mass) {
        BigDecimal rounded = mass.value().setScale(3, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return decimal(rounded, Math.max(0, rounded.scale()));
    }

    /** A range, or the one figure where both ends look the same. */
    public static String range(double low, double high, int decimals) {
        String from = figure(low, decimals);
        String to = figure(high, decimals);
        return from.equals(to) ? from : from + " to " + to;
    }

    public static String range(Interval interval, int decimals) {
        return range(interval.low(), interval.high(), decimals);
    }

    public static String day(LocalDate day) {
        return DAY.format(day);
    }

    public static String moment(Instant moment, ZoneId zone) {
        return MOMENT.format(moment.atZone(zone));
    }

    public static String time(Instant moment, ZoneId zone) {
        return TIME.format(moment.atZone(zone));
    }

    /** A constant of an enum as words: LOOK_AT_THIS becomes "look at this". */
    public static String words(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The same as part of a style name: LOOK_AT_THIS becomes "look-at-this". */
    public static String style(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
