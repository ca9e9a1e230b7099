package stillroom.formulary.rule;

import java.util.Optional;

/**
 * The wording of a label warning in one language.
 *
 * @param key which warning
 * @param language code such as {@code en}
 * @param legalWording whether the text was read in the law in that language; else it is our translation
 */
public record WarningText(String key, String language, String text, boolean legalWording, String source) {
    /** How the text was come by, in words; empty for the law's own wording. */
    public Optional<String> reserve() {
        return legalWording ? Optional.empty() : Optional.of("wording not read in the legal text");
    }
}
