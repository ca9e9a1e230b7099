package stillroom.formulary.judgement.pot;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.evaluation.SubstanceShare;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.Constituent.Role;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.Substance;

/** A substance's share with what is known of the substance. */
public record Share(SubstanceShare share, Optional<Substance> substance) {
    public String key() {
        return share.substance();
    }

    public String name() {
        return substance.map(Substance::inciName).orElse(share.substance());
    }

    /**
     * What a law may know it by: its key, and its INCI name written as a key. A maker's own substance may have any key;
     * "Quaternium-15" is met under its name all the same.
     */
    public List<String> names() {
        return isSlug(key(), name()) ? List.of(key()) : List.of(key(), slug(name()));
    }

    public boolean isNamedBy(List<String> keys) {
        return keys.contains(key()) || names().stream().anyMatch(keys::contains);
    }

    /** Whether the key is the slug of the name already, as it mostly is; told without making it. */
    private static boolean isSlug(String key, String name) {
        if (key.length() != name.length()) {
            return false;
        }
        for (int i = 0; i < key.length(); i++) {
            char letter = Character.toLowerCase(name.charAt(i));
            boolean same = Character.isLetterOrDigit(letter) ? key.charAt(i) == letter : isBreak(key, i);
            if (!same) {
                return false;
            }
        }
        return true;
    }

    /** A single hyphen inside the key. */
    private static boolean isBreak(String key, int place) {
        return key.charAt(place) == '-' && place > 0 && place < key.length() - 1 && key.charAt(place - 1) != '-';
    }

    /** Lower case, with one hyphen for each run of anything else but letters and digits. */
    private static String slug(String name) {
        StringBuilder slug = new StringBuilder(name.length());
        for (int i = 0; i < name.length(); i++) {
            char letter = Character.toLowerCase(name.charAt(i));
            if (Character.isLetterOrDigit(letter)) {
                slug.append(letter);
            } else if (slug.length() > 0 && slug.charAt(slug.length() - 1) != '-') {
                slug.append('-');
            }
        }
        int end = slug.length();
        return end > 0 && slug.charAt(end - 1) == '-' ? slug.substring(0, end - 1) : slug.toString();
    }

    public List<String> lines() {
        return share.lines();
    }

    /** In the pot, evaporation included. */
    public MassFraction amount() {
        return share.inThePot();
    }

    public double nominal() {
        return share.inThePot().nominal();
    }

    public boolean is(String tag) {
        return substance.map(known -> known.is(tag)).orElse(false);
    }

    public boolean isSurfactant(ChargeClass charge) {
        return substance
                .map(known -> known.surfactant() && known.charge() == charge)
                .orElse(false);
    }

    public boolean hasCharge(ChargeClass charge) {
        return substance.map(known -> known.charge() == charge).orElse(false);
    }

    public boolean isIngredient() {
        return share.role() == Role.INGREDIENT;
    }

    public boolean isWater() {
        return Pot.isWater(key());
    }
}
