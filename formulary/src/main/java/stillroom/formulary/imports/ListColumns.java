package stillroom.formulary.imports;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Tells the columns of a list also from what they hold; what the maker said goes first. */
record ListColumns(ListTable table) {
    private static final Pattern CODE = Pattern.compile("\\p{L}{0,4}[-_./ ]?\\d[\\d\\-_./]*\\p{L}?|\\d+");
    private static final Pattern MONEY = Pattern.compile(".*(" + ListWords.CURRENCY + ").*");
    private static final Pattern UNIT_OF_MASS = Pattern.compile("(?i)kgs?|g|gr|mg|oz|lbs?|kilos?|gramm?e?s?|grams?");

    ListTable told() {
        List<ListColumn> columns = new ArrayList<>(table.columns());
        for (int place = 0; place < table.grid().width(); place++) {
            int at = place;
            if (columns.stream().noneMatch(column -> column.place() == at)) {
                columns.add(new ListColumn(at, "", Meaning.LEFT_OUT, Optional.empty(), Basis.UNSAID, false));
            }
        }
        columns.replaceAll(this::byContent);
        columns.replaceAll(this::untold);
        addName(columns);
        columns.replaceAll(
                column -> Optional.ofNullable(table.terms().guidance().columns().get(column.place()))
                        .map(column::as)
                        .orElse(column));
        return table.with(columns);
    }

    /** Where the cells are not what the heading says. */
    private ListColumn byContent(ListColumn column) {
        Meaning meaning = column.meaning();
        if (meaning.names() && table.part(column, ListColumns::isCode) > 0.6) {
            return column.as(Meaning.LEFT_OUT);
        }
        if (meaning == Meaning.UNIT
                && table.part(column, cell -> UNIT_OF_MASS.matcher(cell.text()).matches()) < 0.5) {
            boolean packs = table.part(column, ListColumns::isMass) > 0.5;
            return packs ? column.as(Meaning.PACK) : column;
        }
        if (meaning == Meaning.LOT && table.part(column, ListColumns::isMass) > 0.6) {
            return column.as(Meaning.AMOUNT);
        }
        if (meaning == Meaning.PACK && table.part(column, ListColumns::isFigure) < 0.4) {
            return column.as(Meaning.NOTE);
        }
        if (meaning == Meaning.STOCK && table.part(column, ListColumns::isMoney) > 0.5) {
            return column.as(Meaning.VALUE);
        }
        if (meaning == Meaning.STOCK && table.part(column, ListColumns::isWords) > 0.6) {
            return column.guessed(Meaning.LEFT_OUT);
        }
        boolean days = table.part(column, ListColumns::isDay) > 0.5;
        if (meaning == Meaning.STOCK && days) {
            return column.as(Meaning.LEFT_OUT);
        }
        return meaning == Meaning.RECEIVED && !days && table.part(column, ListColumns::isWords) > 0.5
                ? column.as(Meaning.SUPPLIER)
                : column;
    }

    /** A heading that says nothing known, above cells that say it. */
    private ListColumn untold(ListColumn column) {
        if (column.told()
                || column.meaning() != Meaning.LEFT_OUT
                || table.cells(column).size() < 2) {
            return column;
        }
        if (table.part(column, cell -> UNIT_OF_MASS.matcher(cell.text()).matches()) > 0.8) {
            return column.guessed(Meaning.UNIT);
        }
        if (table.part(column, ListColumns::isMoney) > 0.6) {
            return column.guessed(Meaning.PRICE);
        }
        return table.part(column, ListColumns::isMass) > 0.6 ? column.guessed(Meaning.AMOUNT) : column;
    }

    private void addName(List<ListColumn> columns) {
        boolean inci = columns.stream().anyMatch(column -> column.meaning() == Meaning.INCI);
        boolean named =
                columns.stream().anyMatch(column -> column.meaning().names() && column.meaning() != Meaning.INCI);
        if (inci && !named) {
            columns.replaceAll(column -> isNameOfEach(column) ? column.guessed(Meaning.NAME) : column);
        }
        boolean has = columns.stream()
                .anyMatch(column -> column.meaning().names() && table.part(column, ListColumns::isWords) > 0);
        if (!has) {
            columns.stream()
                    .filter(column -> column.meaning() == Meaning.LEFT_OUT && !column.told())
                    .max(Comparator.comparingLong(column -> table.cells(column).stream()
                            .filter(ListColumns::isWords)
                            .map(Cell::text)
                            .distinct()
                            .count()))
                    .filter(column -> table.part(column, ListColumns::isWords) > 0.5)
                    .ifPresent(column -> columns.set(columns.indexOf(column), column.guessed(Meaning.NAME)));
        }
    }

    /** A heading that says nothing known, above a text of its own for each line. */
    private boolean isNameOfEach(ListColumn column) {
        List<Cell> cells = table.cells(column);
        long distinct = cells.stream().map(Cell::text).distinct().count();
        return column.meaning() == Meaning.LEFT_OUT
                && !column.told()
                && cells.size() > 2
                && distinct * 10 >= cells.size() * 9L
                && table.part(column, ListColumns::isWords) > 0.9;
    }

    private static boolean isCode(Cell cell) {
        return CODE.matcher(cell.text()).matches();
    }

    static boolean isWords(Cell cell) {
        return cell.number().isEmpty()
                && cell.text().matches(".*\\p{L}{3}.*")
                && !isCode(cell)
                && !isMoney(cell)
                && !isMass(cell)
                && !isDay(cell);
    }

    static boolean isMoney(Cell cell) {
        return cell.number().isEmpty() && MONEY.matcher(Folding.of(cell.text())).matches();
    }

    static boolean isMass(Cell cell) {
        MassCell mass = MassCell.read(cell, Optional.of(Mark.POINT));
        return mass.isFigure() && mass.unit().flatMap(Unit::grams).isPresent();
    }

    static boolean isFigure(Cell cell) {
        return cell.number().isPresent() && !cell.is(Cell.Trait.DAY)
                || MassCell.read(cell, Optional.of(Mark.POINT)).isFigure();
    }

    static boolean isDay(Cell cell) {
        return cell.is(Cell.Trait.DAY)
                || cell.number().isEmpty()
                        && Days.of(List.of())
                                .read(cell.text(), new ArrayList<>())
                                .isPresent();
    }
}
