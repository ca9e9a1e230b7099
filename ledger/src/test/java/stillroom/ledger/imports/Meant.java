package stillroom.ledger.imports;

import java.util.List;

/**
 * What a file of the corpus means, written down when it was made.
 *
 * @param made by which program the file was written
 */
record Meant(String made, List<Formula> formulas, List<Material> materials) {
    record Formula(String title, List<Line> lines) {}

    /** @param amount per cent, "rest" for q.s. to 100, "ph" for q.s. to pH */
    record Line(String name, String amount, String phase) {}

    record Material(
            String name,
            String paid,

            @com.fasterxml.jackson.annotation.JsonProperty("for")
            String grams,

            String stock,
            String lot) {}
}
