package stillroom.desk.lots;

import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.formulary.quantity.Grams;

/** What the pages of lots show. */
public final class LotPages {
    private LotPages() {}

    /**
     * All lots, first expired first.
     *
     * @param withUsedUp whether lots that are used up are listed too
     * @param waiting those in quarantine
     */
    public record ListPage(Frame frame, List<Row> rows, boolean withUsedUp, int hidden, List<Row> waiting) {}

    /** One lot in the list. */
    public record Row(String code, String material, String onHand, String expiry, String state, boolean expired) {}

    /**
     * The form of a delivery.
     *
     * @param isWater whether source, conductivity and treatment are asked
     */
    public record ReceivePage(Frame frame, Material material, Typed typed, boolean isWater, String currency) {}

    /**
     * One lot.
     *
     * @param seen what the lot looked like when the page was made, to notice a stale edit
     * @param conflict one sentence where somebody saved in the meantime, else empty
     */
    public record LotPage(
            Frame frame,
            Lot lot,
            String material,
            Stocked stock,
            String expiry,
            String price,
            boolean expired,
            String seen,
            String conflict,
            Typed facts,
            Typed count,
            List<Choice> states,
            List<Count> counts,
            List<Use> uses,
            String currency,
            boolean isWater,
            List<String> water,
            List<String> doubts) {}

    /** The book's reckoning of a lot. */
    public record Stocked(Grams received, Grams poured, Grams counted, Grams onHand) {}

    /** One stock count. */
    public record Count(String when, String by, String found, String correction, String reason) {}

    /** One batch that holds some of the lot. */
    public record Use(long batchId, String code, String product, String stage, String mass) {}
}
