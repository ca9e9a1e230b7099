package stillroom.formulary.imports;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Tells what the columns of a table are that no heading names; what the maker said goes first. */
record Columns(Table table, Terms terms) {
    /** A table without headings. */
    Table told() {
        List<Content> contents = contents(0, table.grid().width() - 1);
        Optional<Content> name = contents.stream()
                .filter(content -> content.words() > 0)
                .max(Comparator.comparingInt(Content::words).thenComparing(content -> -content.place()));
        List<Column> columns = new ArrayList<>();
        for (Content content : contents) {
            columns.add(guessed(content, meaning(content, name)));
        }
        return with(columns);
    }

    private static Meaning meaning(Content content, Optional<Content> name) {
        int nameAt = name.map(Content::place).orElse(-1);
        if (content.place() == nameAt) {
            return Meaning.NAME;
        }
        if (content.serial() && content.place() < nameAt) {
            return Meaning.NUMBER;
        }
        if (content.isUnits()) {
            return Meaning.UNIT;
        }
        if (content.place() < nameAt && content.phases() > 0 && content.figures() == 0) {
            return Meaning.PHASE;
        }
        if (content.isMostlyFigures()) {
            return Meaning.AMOUNT;
        }
        boolean asFull = name.map(one -> content.words() * 5 >= one.words() * 3).orElse(false);
        return asFull && content.place() > nameAt && content.place() <= nameAt + 1 ? Meaning.COMMON : Meaning.NOTE;
    }

    /** A table with headings; columns between them that have none are told from what they hold. */
    Table within(int left, int right) {
        List<Column> columns = new ArrayList<>(table.columns());
        for (Content content : contents(left, right)) {
            if (columns.stream().noneMatch(column -> column.place() == content.place())) {
                columns.add(guessed(content, Meaning.LEFT_OUT));
            }
        }
        columns.sort(Comparator.comparingInt(Column::place));
        takeOutSerials(columns);
        addNames(columns);
        demoteAmounts(columns);
        addPhases(columns);
        addUnits(columns);
        addShares(columns);
        addAmounts(columns);
        leaveOutHidden(columns);
        return with(columns);
    }

    /** A column headed as an amount that only counts its lines, or a number that is none. */
    private void takeOutSerials(List<Column> columns) {
        columns.replaceAll(column -> column.meaning() == Meaning.NAME
                        && content(column).words() == 0
                        && content(column).serial()
                ? column.as(Meaning.NUMBER)
                : column);
    }

    private void addNames(List<Column> columns) {
        if (columns.stream()
                .anyMatch(column -> column.meaning().names() && content(column).words() > 0)) {
            addNamesInFront(columns);
            return;
        }
        columns.stream()
                .filter(column -> column.meaning() == Meaning.LEFT_OUT)
                .max(Comparator.comparingInt(column -> content(column).words()))
                .filter(column -> content(column).words() > 1)
                .ifPresent(column -> columns.set(columns.indexOf(column), column.as(Meaning.NAME)));
    }

    /** A heading that says nothing known, in front of the INCI names, over a text of its own for each line. */
    private void addNamesInFront(List<Column> columns) {
        boolean named = columns.stream().anyMatch(column -> column.meaning() == Meaning.NAME);
        Column inci = columns.stream()
                .filter(column -> column.meaning() == Meaning.INCI)
                .findFirst()
                .orElse(null);
        if (named || inci == null) {
            return;
        }
        columns.replaceAll(column -> column.meaning() == Meaning.LEFT_OUT
                        && column.guessed()
                        && column.place() == inci.place() - 1
                        && content(column).words() * 5 >= content(inci).words() * 4
                        && distinct(column) * 5 >= content(column).filled() * 4
                ? column.as(Meaning.NAME)
                : column);
    }

    private long distinct(Column column) {
        return IntStream.rangeClosed(table.first(), table.last())
                .mapToObj(row -> table.grid().cell(row, column.place()).text())
                .filter(text -> !text.isEmpty())
                .distinct()
                .count();
    }

    /** A few words in front of many names, each over several rows: phases, whatever they are called. */
    private boolean groups(Column column, int nameAt) {
        Content content = content(column);
        long names = columnsRows(nameAt);
        return content.words() > 0
                && content.figures() == 0
                && names > 3
                && distinct(column) >= 2
                && distinct(column) * 2 <= names;
    }

    private boolean counts(Column column) {
        return Folding.of(column.heading()).matches("(ph?|f|st|gr?|tl?)?\\.?")
                && Content.counts(table.grid(), column.place(), table.first(), table.last());
    }

    private long columnsRows(int place) {
        return IntStream.rangeClosed(table.first(), table.last())
                .filter(row -> !table.grid().cell(row, place).isBlank())
                .count();
    }

    private void addPhases(List<Column> columns) {
        boolean has = columns.stream().anyMatch(column -> column.meaning() == Meaning.PHASE);
        int nameAt = columns.stream()
                .filter(column -> column.meaning().names())
                .mapToInt(Column::place)
                .min()
                .orElse(0);
        if (!has) {
            columns.replaceAll(column -> column.meaning() == Meaning.LEFT_OUT
                            && column.guessed()
                            && column.place() < nameAt
                            && (content(column).isMostlyPhases()
                                    || column.heading().isEmpty() && groups(column, nameAt))
                    ? column.as(Meaning.PHASE)
                    : column);
            columns.replaceAll(column -> column.meaning() == Meaning.LEFT_OUT && column.guessed() && counts(column)
                    ? column.as(Meaning.PHASE)
                    : column);
        }
    }

    private void addUnits(List<Column> columns) {
        columns.replaceAll(column -> column.meaning() == Meaning.LEFT_OUT
                        && column.guessed()
                        && content(column).isUnits()
                ? column.as(Meaning.UNIT)
                : column);
    }

    /** A heading may mislead: a column that holds no figure is none of amounts. */
    private void demoteAmounts(List<Column> columns) {
        columns.replaceAll(column -> column.meaning() == Meaning.AMOUNT
                        && content(column).filled() > 0
                        && content(column).figures() == 0
                        && content(column).isMostlyPhases()
                ? column.as(Meaning.PHASE)
                : column);
    }

    /** A hidden column of amounts beside one that is shown is an old one. */
    private void leaveOutHidden(List<Column> columns) {
        boolean shown = columns.stream()
                .anyMatch(column ->
                        column.meaning() == Meaning.AMOUNT && content(column).figures() > 0 && !isHidden(column));
        if (shown) {
            columns.replaceAll(column ->
                    column.meaning() == Meaning.AMOUNT && isHidden(column) ? column.as(Meaning.LEFT_OUT) : column);
        }
    }

    private boolean isHidden(Column column) {
        return IntStream.rangeClosed(table.first(), table.last())
                .mapToObj(row -> table.grid().cell(row, column.place()))
                .filter(cell -> !cell.isBlank())
                .allMatch(cell -> cell.is(Cell.Trait.HIDDEN));
    }

    /** A heading that says nothing known above cells that say themselves what they are: "4,0 %", "ad 100". */
    private void addShares(List<Column> columns) {
        boolean has = columns.stream()
                .anyMatch(column -> column.meaning() == Meaning.AMOUNT
                        && column.unit().map(Unit::isShare).orElse(false)
                        && content(column).figures() > 0);
        if (!has) {
            columns.replaceAll(column -> column.meaning() == Meaning.LEFT_OUT && column.guessed() && saysShares(column)
                    ? column.as(Meaning.AMOUNT)
                    : column);
        }
    }

    private boolean saysShares(Column column) {
        long shares = IntStream.rangeClosed(table.first(), table.last())
                .mapToObj(row -> table.grid().cell(row, column.place()))
                .map(cell -> FigureReading.read(cell, Optional.empty()))
                .filter(figure -> figure.kind() == Figure.Kind.EXACT
                        && figure.unit().map(Unit::isShare).orElse(false))
                .count();
        Content content = content(column);
        return content.isMostlyFigures() && shares >= 2 && shares * 2 >= content.figures();
    }

    private void addAmounts(List<Column> columns) {
        boolean has = columns.stream()
                .anyMatch(column ->
                        column.meaning() == Meaning.AMOUNT && content(column).figures() > 0);
        boolean shelf = columns.stream().anyMatch(column -> column.meaning().isOfTheShelf());
        if (!has && !shelf) {
            columns.replaceAll(column -> column.meaning() == Meaning.LEFT_OUT
                            && column.guessed()
                            && content(column).isMostlyFigures()
                    ? column.as(Meaning.AMOUNT)
                    : column);
        }
    }

    private Column guessed(Content content, Meaning meaning) {
        return new Column(content.place(), "", meaning, Optional.empty(), Optional.empty(), true);
    }

    private List<Content> contents(int left, int right) {
        return IntStream.rangeClosed(left, right)
                .mapToObj(place -> Content.of(table.grid(), place, table.first(), table.last()))
                .filter(content -> content.filled() > 0)
                .toList();
    }

    private Content content(Column column) {
        return Content.of(table.grid(), column.place(), table.first(), table.last());
    }

    private Table with(List<Column> columns) {
        List<Column> decided = columns.stream()
                .map(column -> Optional.ofNullable(terms.guidance().columns().get(column.place()))
                        .map(column::as)
                        .orElse(column))
                .toList();
        return new Table(
                table.grid(), decided, table.titles(), table.heads(), table.first(), table.last(), table.phase());
    }
}
