package stillroom.formulary.constants;

import java.util.Map;

/**
 * All constants by which a pH is computed.
 *
 * @param acids acids and bases that dissolve
 * @param gathered those that gather, by substance: surfactants in micelles, polyacids
 */
public record PhConstants(AcidConstants acids, Map<String, EffectiveConstant> gathered) {
    public PhConstants {
        gathered = Map.copyOf(gathered);
    }

    /** The tables of this jar. */
    public static PhConstants shipped() {
        return new PhConstants(AcidConstantsFile.shipped(), EffectiveConstantsFile.shipped());
    }

    /** The same without what gathers: where a titration shows how that really buffers. */
    public PhConstants dissolvedAlone() {
        return new PhConstants(acids, Map.of());
    }
}
