package stillroom.formulary.imports;

import java.util.List;

/**
 * Which columns of amounts belong to one formula.
 *
 * @param main place among the columns of amounts of the one that counts
 * @param checks places of those that must agree with it, such as grams beside per cent
 * @param many whether the table holds several formulas in columns beside each other
 * @param old whether its heading says that it is an older state
 */
record Variant(int main, List<Integer> checks, String heading, boolean many, boolean old) {
    Variant {
        checks = List.copyOf(checks);
    }

    /** The one that counts, where all others are older states of it: it needs no name of its own. */
    Variant alone(boolean isAlone) {
        return isAlone ? new Variant(main, checks, "", many, old) : this;
    }

    /** Whether its heading is part of the title. */
    boolean isNamed() {
        return many && !heading.isBlank();
    }
}
