package stillroom.formulary.imports;

import java.util.List;

/**
 * Which columns of amounts belong to one formula.
 *
 * @param main place among the columns of amounts of the one that counts
 * @param checks places of those that must agree with it, such as grams beside per cent
 * @param many whether the table holds several formulas in columns beside each other
 */
record Variant(int main, List<Integer> checks, String heading, boolean many) {
    Variant {
        checks = List.copyOf(checks);
    }
}
