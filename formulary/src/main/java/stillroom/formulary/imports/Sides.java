package stillroom.formulary.imports;

import java.util.ArrayList;
import java.util.List;

/** Parts headings that stand for tables side by side: name, amount, name, amount. */
final class Sides {
    private Sides() {}

    static List<List<Column>> of(List<Column> columns) {
        List<List<Column>> sides = new ArrayList<>();
        List<Column> side = new ArrayList<>();
        for (Column column : columns) {
            if (begins(column, side, columns)) {
                sides.add(side);
                side = new ArrayList<>();
            }
            side.add(column);
        }
        sides.add(side);
        return sides;
    }

    /** Whether a new table begins: this one has its name and amount, and both come once more. */
    private static boolean begins(Column column, List<Column> side, List<Column> all) {
        boolean repeats =
                side.stream().anyMatch(one -> Folding.of(one.heading()).equals(Folding.of(column.heading())));
        boolean opens = column.meaning().names()
                || column.guessed()
                || column.meaning() == Meaning.PHASE
                || column.meaning() == Meaning.NUMBER;
        return opens && repeats && isWhole(side) && isWhole(after(column, all));
    }

    private static List<Column> after(Column column, List<Column> all) {
        return all.stream().filter(one -> one.place() >= column.place()).toList();
    }

    private static boolean isWhole(List<Column> side) {
        return side.stream().anyMatch(column -> column.meaning().names() || column.guessed())
                && side.stream().anyMatch(column -> column.meaning() == Meaning.AMOUNT);
    }
}
