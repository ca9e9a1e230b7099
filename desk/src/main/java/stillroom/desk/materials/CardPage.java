package stillroom.desk.materials;

import java.util.List;
import stillroom.desk.shell.Frame;
import stillroom.formulary.material.Material;

/**
 * A card as it is shown.
 *
 * @param origin whose card it is, one sentence
 * @param stated what of the composition is stated, one sentence; empty where the whole is
 * @param price as shown, empty where the card has none
 */
public record CardPage(
        Frame frame,
        Material card,
        String inci,
        String origin,
        List<FactRow> facts,
        List<Part> composition,
        String stated,
        String compositionSource,
        String cautionsSource,
        String price,
        List<LotRow> lots,
        String onHand,
        List<CardHistory.Revision> history,
        Impact impact) {
    /** One constituent in words. */
    public record Part(String inci, String cas, String share, String role, String charge, String molarMass) {}

    /**
     * One lot of the material.
     *
     * @param state in words, expiry included
     */
    public record LotRow(String code, String onHand, String expires, String state) {}
}
