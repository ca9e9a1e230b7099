package stillroom.formulary.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.reference.ReferenceRow;
import stillroom.formulary.reference.ReferenceTable;

/** The smallest letters that a market's table allows. Immutable. */
public final class LetterHeights {
    private static final String FILE = "rules/letter-heights.csv";

    private final List<Row> rows;

    private LetterHeights(List<Row> rows) {
        this.rows = List.copyOf(rows);
    }

    private record Row(String market, String what, double above, double upTo, Height height) {
        boolean holds(String asked, String part, double content) {
            return market.equals(asked) && what.equals(part) && content > above && content <= upTo;
        }
    }

    /**
     * A smallest height and where it stands.
     *
     * @param millimetres of figures or capital letters [mm]
     * @param read whether it was read in the text named, not given from memory
     */
    public record Height(double millimetres, String source, boolean read) {}

    /** The table in the jar. */
    public static LetterHeights load() {
        List<Row> rows = new ArrayList<>();
        for (ReferenceRow row : ReferenceTable.read(
                FILE, "market", "what", "above", "up_to", "height_millimetres", "source_key", "status")) {
            rows.add(new Row(
                    row.required("market"),
                    row.required("what"),
                    row.requiredDecimal("above").doubleValue(),
                    row.requiredDecimal("up_to").doubleValue(),
                    new Height(
                            row.requiredDecimal("height_millimetres").doubleValue(),
                            row.required("source_key"),
                            row.required("status").equals("read"))));
        }
        return new LetterHeights(rows);
    }

    /** Smallest figures of the net content [mm], where the table has a row. */
    public Optional<Height> ofContent(String market, double contentGramsOrMillilitres) {
        return find(market, "content", contentGramsOrMillilitres);
    }

    /** Smallest letters of the ingredient list, where the table has a row. */
    public Optional<Height> ofIngredients(String market) {
        return find(market, "ingredients", 1);
    }

    private Optional<Height> find(String market, String what, double content) {
        return rows.stream()
                .filter(row -> row.holds(market, what, content))
                .map(Row::height)
                .findFirst();
    }
}
