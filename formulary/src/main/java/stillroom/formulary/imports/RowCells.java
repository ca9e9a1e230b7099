package stillroom.formulary.imports;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads the cells of a row as those of an ingredient, whatever the row turns out to be. */
final class RowCells {
    private final Table table;
    private final Terms terms;
    private final boolean bareInline;

    RowCells(Table table, Terms terms) {
        this.table = table;
        this.terms = terms;
        this.bareInline = isInline();
    }

    /** Whether names carry their amounts in the same cell all through the table. */
    boolean bareInline() {
        return bareInline;
    }

    /** Names that carry their amounts in the same cell, all through the table. */
    private boolean isInline() {
        if (!table.columns(Meaning.AMOUNT).isEmpty() || table.names().isEmpty()) {
            return false;
        }
        int column = table.names().get(0).place();
        int filled = 0;
        int inline = 0;
        for (int row = table.first(); row <= table.last(); row++) {
            String text = table.grid().cell(row, column).text();
            filled += text.isEmpty() ? 0 : 1;
            inline += InlineAmount.read(text, terms.mark()).isPresent() ? 1 : 0;
        }
        return inline >= 2 && inline * 2 >= filled;
    }

    /** The row read as an ingredient, whatever it turns out to be. */
    Row line(int place) {
        List<Flag> flags = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (Column column : table.names()) {
            Cell cell = table.grid().cell(place, column.place());
            if (!cell.isBlank() && !cell.is(Cell.Trait.MERGED) && !names.contains(NameText.of(cell.text()))) {
                names.add(NameText.of(cell.text()));
            }
            if (cell.is(Cell.Trait.HIDDEN)) {
                flags.add(Flag.doubt("This row is hidden in the sheet."));
            }
        }
        List<Figure> figures = new ArrayList<>();
        for (Column column : table.columns(Meaning.AMOUNT)) {
            figures.add(figure(place, column));
        }
        shiftBack(place, names, figures, flags);
        turnAround(place, names, figures, flags);
        takeInline(place, names, figures, flags);
        return new Row(
                place,
                RowKind.LINE,
                table.text(place, Meaning.PHASE),
                names,
                table.text(place, Meaning.CAS),
                note(place),
                text(place),
                figures,
                flags);
    }

    private Figure figure(int place, Column column) {
        Cell cell = table.grid().cell(place, column.place());
        Figure read = FigureReading.leniently(cell, terms.mark());
        Figure figure = read.isAmount() && cell.is(Cell.Trait.HIDDEN)
                ? read.with(Flag.doubt("The amount stands in a row or column that the sheet hides."))
                : read;
        Optional<Column> unit = table.columns(Meaning.UNIT).stream()
                .filter(one -> one.place() > column.place())
                .findFirst();
        if (figure.isAmount() && figure.unit().isEmpty() && unit.isPresent()) {
            return figure.in(
                    UnitWords.of(table.grid().cell(place, unit.get().place()).text()));
        }
        boolean merged = table.grid().cell(place, column.place()).is(Cell.Trait.MERGED);
        return merged
                ? Figure.of(Figure.Kind.UNREADABLE)
                        .with(Flag.doubt(
                                "The amount above is merged over this row too; what is meant for each is not known."))
                : figure;
    }

    /** A comma in the name may have parted it: "Bergamot oil | FCF | 0.4 %" among lines of two cells. */
    private void shiftBack(int place, List<String> names, List<Figure> figures, List<Flag> flags) {
        if (names.size() != 1 || figures.size() != 1 || figures.get(0).kind() != Figure.Kind.UNREADABLE) {
            return;
        }
        int at = table.columns(Meaning.AMOUNT).get(0).place();
        String rest = table.grid().cell(place, at).text();
        Figure behind = FigureReading.read(table.grid().cell(place, at + 1), terms.mark());
        boolean room = at == table.names().get(0).place() + 1
                && table.columns().stream()
                        .noneMatch(column ->
                                column.place() == at + 1 && (!column.guessed() || column.meaning() == Meaning.AMOUNT));
        if (behind.isAmount() && room && rest.chars().noneMatch(Character::isDigit)) {
            names.set(0, names.get(0) + ", " + rest);
            figures.set(0, behind);
            flags.add(Flag.doubt("The amount stands one column further right; the name was perhaps parted."));
        }
    }

    /** An amount where the name should be and the name where the amount should be: typed the other way round. */
    private void turnAround(int place, List<String> names, List<Figure> figures, List<Flag> flags) {
        if (names.size() != 1 || figures.size() != 1 || figures.get(0).kind() != Figure.Kind.UNREADABLE) {
            return;
        }
        Figure figure =
                FigureReading.read(table.grid().cell(place, table.names().get(0).place()), terms.mark());
        String name = table.grid()
                .cell(place, table.columns(Meaning.AMOUNT).get(0).place())
                .text();
        if (figure.isAmount() && name.matches(".*\\p{L}{3}.*")) {
            names.set(0, NameText.of(name));
            figures.set(0, figure);
            flags.add(Flag.doubt("Name and amount stand the other way round in this row."));
        }
    }

    private void takeInline(int place, List<String> names, List<Figure> figures, List<Flag> flags) {
        boolean blank = figures.stream().allMatch(figure -> figure.kind() == Figure.Kind.NONE);
        if (names.isEmpty() || !blank) {
            return;
        }
        Figure bare = bareInline ? FigureReading.text(names.get(0), terms.mark()) : Figure.NOTHING;
        if (bare.isNumber()) {
            names.clear();
            figures.clear();
            figures.add(bare);
            return;
        }
        InlineAmount.read(names.get(0), terms.mark())
                .filter(inline ->
                        bareInline || inline.sure() && !inline.figure().isNumber())
                .filter(inline -> !RowWords.isPhase(names.get(0)) && !Talk.is(names.get(0)))
                .ifPresent(inline -> {
                    names.set(0, NameText.of(inline.name()));
                    figures.clear();
                    int columns = Math.max(1, table.columns(Meaning.AMOUNT).size());
                    for (int i = 0; i < columns; i++) {
                        figures.add(inline.figure());
                    }
                    flags.add(
                            inline.sure()
                                    ? Flag.note("Name and amount stand in one cell.")
                                    : Flag.note("Name and amount stand in one cell, parted by a blank only."));
                });
    }

    private String note(int place) {
        return table.columns().stream()
                .filter(column -> column.meaning() == Meaning.NOTE || column.meaning() == Meaning.FUNCTION)
                .map(column -> table.grid().cell(place, column.place()).text())
                .filter(text -> !text.isEmpty() && text.length() <= 500)
                .collect(Collectors.joining("; "));
    }

    Row plain(int place, RowKind kind) {
        String text = kind == RowKind.TITLE && text(place).isEmpty() ? textInFront(place) : text(place);
        return new Row(place, kind, "", List.of(), "", "", text, List.of(), List.of());
    }

    /** A title may stand in a first column that holds nothing else. */
    private String textInFront(int place) {
        int left = table.columns().stream().mapToInt(Column::place).min().orElse(0);
        return left == 1 ? table.grid().cell(place, 0).text() : "";
    }

    /** All that stands in the columns of this table, left to right. */
    String text(int place) {
        return table.columns().stream()
                .map(column -> table.grid().cell(place, column.place()))
                .filter(cell -> !cell.isBlank() && !cell.is(Cell.Trait.MERGED))
                .map(Cell::text)
                .collect(Collectors.joining(" "));
    }

    String firstText(int place) {
        return table.columns().stream()
                .map(column -> table.grid().cell(place, column.place()))
                .filter(cell -> !cell.isBlank()
                        && !cell.is(Cell.Trait.MERGED)
                        && (cell.number().isEmpty() || cell.text().contains("%")))
                .map(Cell::text)
                .findFirst()
                .orElse("");
    }
}
