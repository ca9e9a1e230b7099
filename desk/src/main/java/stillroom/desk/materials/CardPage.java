package stillroom.desk.materials;

import java.util.List;
import stillroom.desk.shell.Frame;
import stillroom.formulary.material.Material;

/**
 * A card as it is shown.
 *
 * @param origin whose card it is, one sentence
 * @param opened the substances with their ranges, where the card holds other cards; else empty
 * @param unopened cards inside of which nothing is known, one sentence or empty
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
        List<Opened> opened,
        String unopened,
        String stated,
        String compositionSource,
        String cautionsSource,
        String price,
        List<LotRow> lots,
        String onHand,
        List<CardHistory.Revision> history,
        Impact impact) {
    /**
     * One constituent in words.
     *
     * @param card address of the card that it is, empty for a substance
     */
    public record Part(
            String inci, String cas, String share, String role, String charge, String molarMass, String card) {}

    /** One substance of the whole, down through the cards inside [%]. */
    public record Opened(String inci, String cas, String lowest, String nominal, String highest, String role) {}

    /**
     * One lot of the material.
     *
     * @param state in words, expiry included
     */
    public record LotRow(String code, String onHand, String expires, String state) {}
}
