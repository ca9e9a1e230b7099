package stillroom.formulary.imports;

import java.util.Optional;

/**
 * A column of a list of materials.
 *
 * @param unit of its masses, where the heading says so
 * @param basis what its prices are for, as far as the heading says so
 * @param told whether a heading names it; otherwise it was told from its cells
 */
record ListColumn(int place, String heading, Meaning meaning, Optional<Unit> unit, Basis basis, boolean told) {
    ListColumn as(Meaning other) {
        return new ListColumn(place, heading, other, unit, basis, told);
    }

    ListColumn guessed(Meaning other) {
        return new ListColumn(place, heading, other, unit, basis, false);
    }

    ListColumn in(Optional<Unit> other) {
        return new ListColumn(place, heading, meaning, other, basis, told);
    }

    ListColumn per(Basis other) {
        return new ListColumn(place, heading, meaning, unit, other, told);
    }

    /** As the pages show it. */
    Column shown() {
        return new Column(place, heading, meaning, unit, Optional.empty(), !told);
    }
}
