package stillroom.formulary.imports;

import java.util.ArrayList;
import java.util.List;

/** Parts a sheet into tables. */
record Tables(Grid grid, Terms terms) {
    private static final int PHASES = 12;

    List<Table> find() {
        List<Head> heads = new Heads(grid, terms).find();
        if (heads.isEmpty()) {
            Table bare = new Table(grid, List.of(), List.of(), List.of(), 0, grid.height() - 1, "");
            return List.of(ColumnRoles.told(bare, terms, 0, grid.width() - 1));
        }
        List<Table> tables = new ArrayList<>();
        for (int i = 0; i < heads.size(); i++) {
            tables.add(below(heads, i));
        }
        return joined(tables, heads);
    }

    private Table below(List<Head> heads, int place) {
        Head head = heads.get(place);
        int first = heads.get(0).row();
        int last = heads.stream()
                .filter(other -> other.row() > head.row())
                .mapToInt(other ->
                        titles(other, first).stream().mapToInt(row -> row).min().orElse(other.row()) - 1)
                .findFirst()
                .orElse(grid.height() - 1);
        List<Integer> rows = new ArrayList<>();
        for (int row = head.row(); row < head.row() + head.height(); row++) {
            rows.add(row);
        }
        Table table = new Table(
                grid, head.columns(), titles(head, first), rows, head.row() + head.height(), last, head.phase());
        boolean alone = heads.stream().noneMatch(other -> other != head && other.row() == head.row());
        return ColumnRoles.told(table, terms, alone ? 0 : head.left(), alone ? grid.width() - 1 : head.right());
    }

    /** The rows right above the headings that hold no amount beside a name: title, date, batch size. */
    private List<Integer> titles(Head head, int firstHead) {
        List<Integer> titles = new ArrayList<>();
        int row = head.row() - 1;
        int blanks = 0;
        while (row >= 0 && (isBlank(row) ? titles.isEmpty() && ++blanks <= 2 : isTitle(row))) {
            if (!isBlank(row)) {
                titles.add(0, row);
            }
            row--;
        }
        boolean total = row > 0 && isTotal(row) && nothingButWords(row - 1);
        boolean top = head.row() <= 25 && (total || nothingButWords(row) || isFewFigures(head, row, firstHead));
        for (; top && row >= 0; row--) {
            if (!isBlank(row)) {
                titles.add(0, row);
            }
        }
        return titles;
    }

    /** Above the first headings a figure or two are facts and no lines. */
    private boolean isFewFigures(Head head, int last, int firstHead) {
        long figures = java.util.stream.IntStream.rangeClosed(0, last)
                .filter(row -> !isBlank(row) && !isTitle(row))
                .count();
        boolean named =
                head.columns().stream().anyMatch(column -> column.meaning().names());
        return figures < 3 && named && head.row() == firstHead;
    }

    /** A total may stand above everything. */
    private boolean isTotal(int row) {
        return grid.rows().get(row).stream()
                .filter(cell -> !cell.isBlank())
                .findFirst()
                .filter(cell -> RowWords.isTotal(cell.text()))
                .isPresent();
    }

    /** Whether all rows down to this one are titles as well: a sheet may begin with a paragraph of them. */
    private boolean nothingButWords(int last) {
        for (int row = 0; row <= last; row++) {
            if (!isBlank(row) && !isTitle(row)) {
                return false;
            }
        }
        return true;
    }

    private boolean isBlank(int row) {
        return grid.rows().get(row).stream().allMatch(Cell::isBlank);
    }

    private boolean isTitle(int row) {
        String first = grid.rows().get(row).stream()
                .filter(cell -> !cell.isBlank())
                .map(Cell::text)
                .findFirst()
                .orElse("");
        if (RowWords.isFact(first)
                || RowWords.title(first).isPresent()
                || RowWords.batch(first).isPresent()) {
            return true;
        }
        boolean figures = grid.rows().get(row).stream()
                .anyMatch(cell -> !cell.is(Cell.Trait.DAY)
                        && FigureReading.read(cell, java.util.Optional.empty()).isAmount());
        return !figures && !RowWords.isTotal(first);
    }

    /** Headings that come once more for the next phase begin no new table. */
    private List<Table> joined(List<Table> tables, List<Head> heads) {
        List<Table> joined = new ArrayList<>();
        for (int i = 0; i < tables.size(); i++) {
            Table table = tables.get(i);
            boolean goesOn = i > 0
                    && heads.get(i).isLike(heads.get(i - 1))
                    && (!heads.get(i).phase().isEmpty()
                            || table.titles().isEmpty()
                            || table.titles().stream().allMatch(this::isPhaseRow));
            boolean whole = goesOn && isWhole(joined.get(joined.size() - 1), tables.subList(i, tables.size()));
            if (goesOn && !whole) {
                Table before = joined.remove(joined.size() - 1);
                List<Integer> rows = new ArrayList<>(before.heads());
                rows.addAll(table.heads());
                joined.add(new Table(
                        grid, before.columns(), before.titles(), rows, before.first(), table.last(), before.phase()));
            } else {
                joined.add(table);
            }
        }
        return joined;
    }

    /** A formula by itself, unless a total of this and the few that follow stands at the end. */
    private boolean isWhole(Table before, List<Table> others) {
        return new Wholeness(before, terms).isWhole()
                && (others.size() > PHASES || !new GrandTotal(grid, terms, before, others).isStated());
    }

    private boolean isPhaseRow(int row) {
        return grid.rows().get(row).stream()
                .filter(cell -> !cell.isBlank())
                .allMatch(cell -> RowWords.isPhaseAlone(cell.text()));
    }
}
