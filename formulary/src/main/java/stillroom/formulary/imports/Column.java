package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A column of a table.
 *
 * @param heading what stands above it, empty where nothing does
 * @param unit of the amounts, where the heading says so
 * @param whole mass of the whole that the heading names, such as 500 in "for 500 g" [g]
 * @param guessed whether its meaning was told from its content alone
 */
public record Column(
        int place, String heading, Meaning meaning, Optional<Unit> unit, Optional<BigDecimal> whole, boolean guessed) {
    Column called(String other) {
        return new Column(place, other, meaning, unit, whole, guessed);
    }

    Column as(Meaning other) {
        return new Column(place, heading, other, unit, whole, guessed);
    }
}
