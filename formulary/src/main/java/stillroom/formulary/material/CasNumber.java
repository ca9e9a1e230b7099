package stillroom.formulary.material;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Chemical Abstracts Service registry numbers, such as 56-81-5. */
public final class CasNumber {
    private static final Pattern FORM = Pattern.compile("([1-9]\\d{1,6})-(\\d{2})-(\\d)");

    private CasNumber() {}

    /**
     * Whether a text has the form of a registry number and its check digit is right: from the right, the digits before
     * the check digit times 1, 2, 3 ... add up to it modulo 10. That does not tell whether the number was given out.
     */
    public static boolean isSound(String text) {
        Matcher parts = FORM.matcher(text);
        if (!parts.matches()) {
            return false;
        }
        String digits = parts.group(1) + parts.group(2);
        int sum = 0;
        for (int i = 0; i < digits.length(); i++) {
            sum += (digits.length() - i) * (digits.charAt(i) - '0');
        }
        return sum % 10 == parts.group(3).charAt(0) - '0';
    }
}
