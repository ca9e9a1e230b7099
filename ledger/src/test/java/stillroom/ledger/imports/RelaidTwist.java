package stillroom.ledger.imports;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import stillroom.formulary.imports.Cell;
import stillroom.formulary.imports.Grid;

/** What is done to a whole sheet: two on one, rows and columns changed over, names that nobody knows. */
final class RelaidTwist {
    private RelaidTwist() {}

    /** The formula with about every third name replaced by one that no library holds. */
    static Meant.Formula strange(long seed, Meant.Formula formula) {
        Random random = new Random(seed);
        List<Meant.Line> lines = new ArrayList<>();
        for (Meant.Line line : formula.lines()) {
            boolean odd = !lines.isEmpty() && random.nextInt(3) == 0;
            String name = RelaidWords.unknown(random)
                    + (random.nextBoolean()
                            ? " " + RelaidWords.unknown(random).toLowerCase(java.util.Locale.ROOT)
                            : "");
            lines.add(new Meant.Line(odd ? name : line.name(), line.amount(), line.phase()));
        }
        return new Meant.Formula(formula.title(), lines);
    }

    static Relaid.Sheet below(Relaid.Sheet one, Relaid.Sheet other) {
        List<List<Cell>> rows = new ArrayList<>(one.grid().rows());
        rows.add(List.of());
        rows.addAll(other.grid().rows());
        return joined(one, other, rows, "below");
    }

    static Relaid.Sheet beside(Relaid.Sheet one, Relaid.Sheet other) {
        List<List<Cell>> rows = new ArrayList<>();
        for (int row = 0; row < Math.max(one.grid().height(), other.grid().height()); row++) {
            List<Cell> cells = new ArrayList<>();
            for (int place = 0; place < one.grid().width(); place++) {
                cells.add(one.grid().cell(row, place));
            }
            cells.add(Cell.EMPTY);
            for (int place = 0; place < other.grid().width(); place++) {
                cells.add(other.grid().cell(row, place));
            }
            rows.add(cells);
        }
        return joined(one, other, rows, "beside");
    }

    private static Relaid.Sheet joined(Relaid.Sheet one, Relaid.Sheet other, List<List<Cell>> rows, String how) {
        List<Meant.Formula> formulas = Stream.of(one, other)
                .flatMap(sheet -> sheet.meant().formulas().stream())
                .toList();
        return new Relaid.Sheet(
                new Grid("Sheet1", rows),
                new Meant("laid out anew", formulas, List.of()),
                one.how() + " " + how + " " + other.how());
    }

    static Relaid.Sheet turned(Relaid.Sheet sheet) {
        Grid grid = new Grid("Sheet1", sheet.grid().turnedOver().rows());
        return new Relaid.Sheet(grid, sheet.meant(), "turned " + sheet.how());
    }
}
