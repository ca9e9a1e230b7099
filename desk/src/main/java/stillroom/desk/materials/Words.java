package stillroom.desk.materials;

import java.math.BigDecimal;
import java.math.RoundingMode;
import stillroom.desk.shell.Format;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.Strength;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.PercentRange;
import stillroom.formulary.quantity.Price;

/** How the facts of a card read. */
public final class Words {
    private Words() {}

    static String basis(Strength.Basis basis) {
        return switch (basis) {
            case ACTIVE -> "active matter";
            case DRY_RESIDUE -> "dry residue";
            case ASSAY_AS_IS -> "assay, as is";
            case AS_ANHYDROUS -> "assay, as anhydrous";
            case AS_ACID -> "as acid";
        };
    }

    static String role(Constituent.Role role) {
        return switch (role) {
            case INGREDIENT -> "ingredient";
            case IMPURITY -> "brought along";
            case FRAGRANCE_PART -> "part of a fragrance";
        };
    }

    static String charge(ChargeClass charge) {
        return switch (charge) {
            case ANIONIC -> "anionic";
            case CATIONIC -> "cationic";
            case AMPHOTERIC -> "amphoteric";
            case NONIONIC -> "non-ionic";
            case NONE -> "none";
        };
    }

    /** The figure itself without needless zeros, as it may be typed again. */
    static String plain(double value) {
        return trimmed(BigDecimal.valueOf(value));
    }

    /** A mass fraction as percent, as it may be typed again. */
    static String percent(double massFraction) {
        return trimmed(BigDecimal.valueOf(massFraction).movePointRight(2));
    }

    /** A mass fraction that was reckoned, as percent to six digits behind the point: beyond, it is noise. */
    static String rounded(double massFraction) {
        return trimmed(BigDecimal.valueOf(massFraction).movePointRight(2).setScale(6, RoundingMode.HALF_EVEN));
    }

    static String share(MassFraction fraction) {
        if (fraction.isExact()) {
            return percent(fraction.nominal()) + " %";
        }
        return percent(fraction.lower()) + " to " + percent(fraction.upper()) + " %, nominal "
                + percent(fraction.nominal()) + " %";
    }

    static String range(PercentRange range) {
        return range.isPoint() ? range.low() + " %" : range.low() + " to " + range.high() + " %";
    }

    static String interval(Interval interval) {
        return interval.isPoint() ? plain(interval.low()) : plain(interval.low()) + " to " + plain(interval.high());
    }

    /** A price as on the invoice and per kilogram. */
    public static String price(Price price, String currency) {
        BigDecimal perKilogram = price.of(Grams.of("1000")).value();
        return price.paid().shown() + " " + currency + " for " + price.amount() + " g ("
                + Format.decimal(perKilogram, 2) + " " + currency + " per kg)";
    }

    private static String trimmed(BigDecimal value) {
        BigDecimal bare = value.stripTrailingZeros();
        return (bare.scale() < 0 ? bare.setScale(0) : bare).toPlainString();
    }
}
