package stillroom.formulary.judgement.pot;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/** Figures as a sentence shows them. */
public final class Words {
    private Words() {}

    /** Up to four significant digits, no exponent, no trailing zeros. */
    public static String figure(double value) {
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(4)).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    /** With one decimal, as a pH is said. */
    public static String tenths(double value) {
        return new BigDecimal(value).setScale(1, RoundingMode.HALF_EVEN).toPlainString();
    }

    /** A mass fraction as percent. */
    public static String percent(double massFraction) {
        return figure(massFraction * 100) + " %";
    }

    /** "a", "a and b", "a, b and c"; where a name holds a comma itself, "a, x; b and c". */
    public static String list(List<String> names) {
        int last = names.size() - 1;
        String between = names.stream().anyMatch(name -> name.contains(", ")) ? "; " : ", ";
        return last < 1
                ? String.join("", names)
                : String.join(between, names.subList(0, last)) + " and " + names.get(last);
    }
}
