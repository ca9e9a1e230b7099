package stillroom.science.dosing;

import java.util.ArrayList;
import java.util.List;

/**
 * What to mind while handling acids and bases. Usual laboratory practice; the supplier's safety data sheet and local
 * rules go before.
 */
public enum Caution {
    EYES_AND_GLOVES("Wear eye protection and gloves; rinse splashes with much water at once."),
    ACID_INTO_WATER("Pour the acid into the water or the product, never water into the acid."),
    HEAT_OF_HYDROXIDE(
            "Hydroxides heat up when dissolved: add them to cold water in small portions, never use aluminium vessels."),
    STIR_AND_WAIT("Add slowly while stirring, wait until the reading stands, then read.");

    private final String sentence;

    Caution(String sentence) {
        this.sentence = sentence;
    }

    /** In words. */
    public String sentence() {
        return sentence;
    }

    /** What to mind with one corrector. */
    public static List<Caution> of(Corrector corrector) {
        List<Caution> cautions = new ArrayList<>(List.of(EYES_AND_GLOVES, STIR_AND_WAIT));
        if (corrector.lowersPh()) {
            cautions.add(ACID_INTO_WATER);
        } else if (corrector.ions().stream().anyMatch(ion -> ion.charge() > 0)) {
            cautions.add(HEAT_OF_HYDROXIDE);
        }
        return cautions;
    }
}
