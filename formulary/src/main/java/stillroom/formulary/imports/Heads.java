package stillroom.formulary.imports;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds the rows of headings of a sheet. */
record Heads(Grid grid, Terms terms) {
    private static final java.util.regex.Pattern DECIMAL = java.util.regex.Pattern.compile("\\d+[.,]\\d+ ?%?");
    private static final int LONGEST_TITLE = 40;

    List<Head> find() {
        List<Head> heads = found();
        boolean alone = heads.size() == 1
                && !heads.get(0).phase().isEmpty()
                && !RowWords.isPhaseForCertain(heads.get(0).phase());
        return alone ? List.of(heads.get(0).ofNames()) : heads;
    }

    private List<Head> found() {
        List<Head> heads = new ArrayList<>();
        int row = 0;
        while (row < grid.height()) {
            List<Head> here = at(row);
            here = here.isEmpty() && (heads.isEmpty() || isSetOff(row))
                    ? new UnknownHeadings(grid, terms).at(row)
                    : here;
            heads.addAll(here);
            row += here.isEmpty() ? 1 : here.get(0).height();
        }
        return heads;
    }

    /** Whether an empty row parts this one from the lines above. */
    private boolean isSetOff(int row) {
        for (int above = row - 1; above >= 0; above--) {
            List<Cell> cells = grid.rows().get(above).stream()
                    .filter(cell -> !cell.isBlank())
                    .toList();
            if (cells.isEmpty()) {
                return true;
            }
            if (cells.size() > 1 && !LineLike.name(cells, terms).isEmpty()) {
                return false;
            }
        }
        return false;
    }

    private List<Head> at(int row) {
        RowKind told = terms.guidance().rows().get(row);
        if (told != null && told != RowKind.HEADING) {
            return List.of();
        }
        if (told == null && holdsDecimals(row)) {
            return List.of();
        }
        List<Column> columns = read(row, false);
        boolean isHead = told == RowKind.HEADING || isHead(row, columns);
        if (!isHead) {
            return phaseHead(row, columns);
        }
        boolean two = told == null && goesOn(row + 1);
        boolean again = told == null && !two && isSaidAgain(columns, row + 1);
        return Sides.of(two ? read(row, true) : columns).stream()
                .map(side -> new Head(row, two || again ? 2 : 1, side, ""))
                .toList();
    }

    /** Whether the next row says the same headings in another language. */
    private boolean isSaidAgain(List<Column> columns, int next) {
        if (next >= grid.height() || terms.guidance().rows().containsKey(next)) {
            return false;
        }
        List<Column> below = read(next, false);
        long same = columns.stream()
                .filter(column -> !column.guessed()
                        && below.stream()
                                .anyMatch(one -> one.place() == column.place() && one.meaning() == column.meaning()))
                .count();
        return below.size() == columns.size() && same > 1 && isHead(next, below);
    }

    /** Most lines have such a figure and no headings do; this spares reading their words. */
    private boolean holdsDecimals(int row) {
        return grid.rows().get(row).stream()
                .anyMatch(cell ->
                        !cell.is(Cell.Trait.DAY) && DECIMAL.matcher(cell.text()).matches());
    }

    /** The cells of a row as headings; those that say nothing known are kept with the meaning "left out". */
    List<Column> read(int row, boolean withNext) {
        List<Column> columns = new ArrayList<>();
        for (int place = 0; place < Math.max(grid.width(row), withNext ? grid.width(row + 1) : 0); place++) {
            String upper = grid.cell(row, place).text();
            String text = withNext ? (upper + " " + grid.cell(row + 1, place).text()).strip() : upper;
            int at = place;
            if (!text.isEmpty()) {
                columns.add(HeadingWords.read(at, text)
                        .or(() -> HeadingWords.read(at, upper))
                        .orElseGet(() ->
                                new Column(at, text, Meaning.LEFT_OUT, Optional.empty(), Optional.empty(), true)));
            }
        }
        return columns;
    }

    /** "Product: | Lotion | Lot: | L1" tells facts and heads nothing. */
    private static boolean isFacts(List<Column> columns) {
        return java.util.stream.IntStream.range(0, columns.size() - 1)
                .anyMatch(i -> columns.get(i).heading().endsWith(":")
                        && columns.get(i + 1).guessed());
    }

    private boolean isHead(int row, List<Column> columns) {
        long known = columns.stream().filter(column -> !column.guessed()).count();
        boolean names = columns.stream().anyMatch(column -> column.meaning().names());
        boolean more = columns.stream()
                .anyMatch(column ->
                        column.meaning() == Meaning.AMOUNT || column.meaning().isOfTheShelf());
        boolean fact = columns.size() == 2
                && columns.get(1).guessed()
                && RowWords.isFact(columns.get(0).heading());
        if (fact || isFacts(columns) || new HeadFigures(grid, row, columns).any()) {
            return false;
        }
        if (!names) {
            return isNameless(row, columns);
        }
        return (more && known * 2 >= columns.size())
                || (known >= 2 && known * 2 >= columns.size() && figuresBelow(row))
                || (isPlainName(columns) && figuresBelow(row));
    }

    /** Amounts are announced, but the column of names is headed by nothing, or by the title of the whole. */
    private boolean isNameless(int row, List<Column> columns) {
        if (columns.isEmpty() || !figuresBelow(row) || !phaseHead(row, columns).isEmpty()) {
            return false;
        }
        Column first = columns.get(0);
        boolean titled = first.guessed()
                && first.heading().length() <= LONGEST_TITLE
                && (!RowWords.isPhaseAlone(first.heading()) || comesAgain(first, columns))
                && !RowWords.isTotal(first.heading())
                && !RowWords.isFact(first.heading())
                && !terms.knownName().test(first.heading());
        List<Column> others = titled ? columns.subList(1, columns.size()) : columns;
        long known = others.stream().filter(column -> !column.guessed()).count();
        boolean amounts = others.stream().anyMatch(column -> column.meaning() == Meaning.AMOUNT)
                && others.stream()
                        .anyMatch(column -> column.meaning() == Meaning.AMOUNT
                                && !FigureReading.text(column.heading(), Optional.empty())
                                        .isAmount());
        boolean room = others.stream().anyMatch(column -> column.guessed() && wordsBelow(row, column))
                || titled
                || first.place() > 0 && wordsBelow(row, first.place());
        return amounts && known * 2 > others.size() && room && !isNamedBelow(row) && hasFiguresBelow(row, others);
    }

    private boolean wordsBelow(int row, Column column) {
        return java.util.stream.IntStream.rangeClosed(row + 1, row + 3)
                        .filter(below -> grid.cell(below, column.place()).text().matches(".*\\p{L}{3}.*"))
                        .count()
                >= 2;
    }

    private static boolean comesAgain(Column first, List<Column> columns) {
        return columns.stream()
                        .filter(column -> column.heading().equals(first.heading()))
                        .count()
                > 1;
    }

    /** Whether a proper heading comes right below: then this row is a title. */
    private boolean isNamedBelow(int row) {
        return java.util.stream.IntStream.rangeClosed(row + 1, row + 3)
                .filter(below -> below < grid.height())
                .mapToObj(below -> read(below, false))
                .anyMatch(below ->
                        below.stream().anyMatch(column -> column.meaning().names())
                                && below.stream().anyMatch(column -> column.meaning() == Meaning.AMOUNT));
    }

    private boolean hasFiguresBelow(int row, List<Column> columns) {
        return columns.stream()
                .filter(column -> column.meaning() == Meaning.AMOUNT)
                .anyMatch(column -> java.util.stream.IntStream.rangeClosed(row + 1, row + 5)
                                .filter(below -> FigureReading.read(grid.cell(below, column.place()), Optional.empty())
                                        .isAmount())
                                .count()
                        >= 2);
    }

    private boolean wordsBelow(int row, int before) {
        return java.util.stream.IntStream.range(0, before)
                .anyMatch(place -> grid.cell(row + 1, place).text().matches(".*\\p{L}{2}.*")
                        || grid.cell(row + 2, place).text().matches(".*\\p{L}{2}.*"));
    }

    private static boolean isPlainName(List<Column> columns) {
        return columns.stream()
                .anyMatch(column -> column.meaning().names()
                        && column.heading().strip().split("\\s+").length <= 3
                        && column.heading().length() <= 28);
    }

    private boolean figuresBelow(int row) {
        int found = 0;
        for (int below = row + 1; below <= Math.min(row + 4, grid.height() - 1); below++) {
            found += figures(below) > 0 ? 1 : 0;
        }
        return found >= 1;
    }

    private long figures(int row) {
        long count = 0;
        for (int place = 0; place < grid.width(row); place++) {
            count += FigureReading.read(grid.cell(row, place), Optional.empty()).isAmount() ? 1 : 0;
        }
        return count;
    }

    /** Whether the headings go on in this row: nothing but heading words such as "(%)" or "[g]". */
    private boolean goesOn(int row) {
        if (terms.guidance().rows().containsKey(row)) {
            return false;
        }
        int said = 0;
        for (int place = 0; place < grid.width(row); place++) {
            Cell cell = grid.cell(row, place);
            if (cell.isBlank()) {
                continue;
            }
            boolean word = cell.number().isEmpty()
                    && cell.text().length() <= 24
                    && !FigureReading.text(cell.text(), Optional.empty()).isAmount()
                    && HeadingWords.read(place, cell.text().replaceAll("[\\[\\]()]", ""))
                            .isPresent();
            if (!word) {
                return false;
            }
            said++;
        }
        return said > 0;
    }

    /** "Phase A | % | g": the phase stands where the word "ingredient" would. */
    private List<Head> phaseHead(int row, List<Column> columns) {
        if (columns.size() < 2 || !RowWords.isPhaseAlone(columns.get(0).heading())) {
            return List.of();
        }
        boolean amounts = columns.stream()
                .skip(1)
                .allMatch(column -> !column.guessed()
                        && grid.cell(row, column.place()).number().isEmpty()
                        && !FigureReading.text(column.heading(), Optional.empty())
                                .isAmount());
        boolean some = columns.stream().skip(1).anyMatch(column -> column.meaning() == Meaning.AMOUNT);
        if (!amounts || !some) {
            return List.of();
        }
        List<Column> all = new ArrayList<>(columns);
        all.set(0, columns.get(0).as(Meaning.NAME));
        return List.of(new Head(row, 1, all, columns.get(0).heading()));
    }
}
