package stillroom.ledger.exchange;

import java.util.Locale;

/** Enum constants as the file writes them: small letters with hyphens. */
final class Words {
    private Words() {}

    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What a person wrote, in the same form. */
    static String bare(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
    }
}
