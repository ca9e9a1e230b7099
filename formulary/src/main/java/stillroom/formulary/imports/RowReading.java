package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Says of each row of a table what it is. Rows are judged downwards: what a row is may depend on those above. */
final class RowReading {
    private static final BigDecimal NEAR = new BigDecimal("0.005");
    private static final int LONGEST_HEADING = 40;

    private static final java.util.regex.Pattern PART_OF_A_LINE = java.util.regex.Pattern.compile(
            "[-(]*\\s*(of which|thereof|davon|dont|di cui|de los cuales|do qual|waarvan|heraf|varav)\\b.*");

    private final Table table;
    private final Terms terms;
    private final List<Row> rows = new ArrayList<>();
    private final boolean bareInline;
    private boolean inMethod;

    RowReading(Table table, Terms terms) {
        this.table = table;
        this.terms = terms;
        this.bareInline = isInline();
    }

    List<Row> read() {
        table.titles().forEach(row -> rows.add(plain(row, RowKind.TITLE)));
        for (int place = table.heads().stream().mapToInt(row -> row).min().orElse(table.first());
                place <= table.last();
                place++) {
            rows.add(table.heads().contains(place) ? head(place) : row(place));
        }
        titleThatLooksLikeALine();
        return List.copyOf(rows);
    }

    /** "Toner version 7" above lines that make 100 without it is a title and no 7 % of anything. */
    private void titleThatLooksLikeALine() {
        List<Row> lines =
                rows.stream().filter(row -> row.kind() == RowKind.LINE).toList();
        if (!bareInline || lines.size() < 3 || !lines.get(0).hasAmount()) {
            return;
        }
        Row first = lines.get(0);
        BigDecimal others = lines.stream()
                .skip(1)
                .filter(Row::hasAmount)
                .map(row -> row.figures().get(0).middle())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        Figure figure = first.figures().get(0);
        boolean bare = figure.unit().isEmpty() && isNear(others, BigDecimal.valueOf(100));
        boolean whole = figure.unit().isPresent() && isNear(others(first, figure), figure.middle());
        if (figure.isNumber()
                && (bare || whole)
                && !terms.knownName()
                        .test(first.names().isEmpty() ? "" : first.names().get(0))
                && terms.guidance().rows().get(first.place()) == null) {
            rows.set(rows.indexOf(first), plain(first.place(), RowKind.TITLE));
        }
    }

    /** What the lines below come to in the same unit: "Lotion (200 g)" above 200 g is a title. */
    private BigDecimal others(Row first, Figure figure) {
        return rows.stream()
                .filter(row -> row.kind() == RowKind.LINE && row != first && row.hasAmount())
                .map(row -> row.figures().get(0))
                .filter(one -> one.unit().equals(figure.unit()))
                .map(Figure::middle)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
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

    private Row head(int place) {
        String first = text(place).isEmpty() ? "" : firstText(place);
        long times = table.grid().rows().get(place).stream()
                .filter(cell -> cell.text().equals(first))
                .count();
        return RowWords.isPhaseAlone(first)
                        && times < 2
                        && !HeadingWords.read(0, first)
                                .map(c -> c.meaning() == Meaning.PHASE)
                                .orElse(false)
                ? new Row(place, RowKind.PHASE, first, List.of(), "", "", text(place), List.of(), List.of())
                : plain(place, RowKind.HEADING);
    }

    private Row row(int place) {
        Row line = line(place);
        RowKind told = terms.guidance().rows().get(place);
        RowKind kind = told != null ? told : kind(line);
        if (told == null && RowWords.isMethod(firstText(place)) && !line.hasAmount()) {
            inMethod = true;
        }
        String phase = kind == RowKind.PHASE ? phaseWords(line) : line.phase();
        List<Flag> flags = new ArrayList<>(line.flags());
        if (told == null && kind == RowKind.PHASE && !RowWords.isPhaseAlone(phase)) {
            flags.add(Flag.doubt("\"" + phase + "\" has no amount; it is taken as the name of a phase."));
        }
        return new Row(place, kind, phase, line.names(), line.cas(), line.note(), line.text(), line.figures(), flags);
    }

    private static String phaseWords(Row line) {
        return line.names().isEmpty()
                ? (line.phase().isEmpty() ? line.text() : line.phase())
                : line.names().get(0);
    }

    private RowKind kind(Row line) {
        String first = firstText(line.place());
        String name = line.names().isEmpty() ? "" : line.names().get(0);
        if (line.text().isEmpty()) {
            return RowKind.BLANK;
        }
        if (inMethod) {
            return RowKind.NOTE;
        }
        if (RowWords.isTotal(first) || RowWords.isTotal(name)) {
            return RowWords.isOfAPhase(first) || RowWords.isOfAPhase(name) ? RowKind.SUBTOTAL : RowKind.TOTAL;
        }
        if (PART_OF_A_LINE.matcher(Folding.of(name)).matches()) {
            return RowKind.NOTE;
        }
        if (RowWords.isList(first)) {
            return RowKind.NOTE;
        }
        boolean known = terms.knownName().test(name);
        if (!known && isUnknownHeading(line)) {
            return RowKind.HEADING;
        }
        if (!known && (RowWords.isFact(first) || RowWords.isFact(name)) && !name.isEmpty()) {
            return RowWords.title(first).isPresent() ? RowKind.TITLE : RowKind.NOTE;
        }
        if (!known && RowWords.isPhase(name) && !isPhraseOfALine(line)) {
            return RowKind.PHASE;
        }
        if (line.hasAmount() && !name.isEmpty() && !known && isTotalByValue(line)) {
            return RowKind.TOTAL;
        }
        if (line.hasAmount()) {
            return name.isEmpty() ? unnamed(line) : RowKind.LINE;
        }
        return withoutAmount(line, name, known);
    }

    /** A column of phases beside it says that this is an ingredient, whatever it is called. */
    private boolean isPhraseOfALine(Row line) {
        return table.column(Meaning.PHASE).isPresent() && !line.phase().isEmpty() && line.hasAmount();
    }

    private RowKind withoutAmount(Row line, String name, boolean known) {
        if (name.isEmpty()) {
            if (isBand(line) && table.heads().isEmpty() && rows.stream().noneMatch(row -> row.kind() == RowKind.LINE)) {
                return RowWords.isPhaseAlone(line.text()) ? RowKind.PHASE : RowKind.TITLE;
            }
            return isBand(line) || RowWords.isPhaseAlone(line.phase()) ? RowKind.PHASE : RowKind.NOTE;
        }
        boolean unreadable = line.figures().stream().anyMatch(figure -> figure.kind() == Figure.Kind.UNREADABLE);
        if (unreadable && !known && isWholeSoFar()) {
            return RowKind.NOTE;
        }
        if (unreadable || known) {
            return RowKind.LINE;
        }
        if (RowWords.isPhaseAlone(name)) {
            return RowKind.PHASE;
        }
        if (!known && Talk.is(name)) {
            return RowKind.NOTE;
        }
        if (isCounted(line) && !isTalk(name)) {
            return RowKind.LINE;
        }
        boolean alone = line.text().equals(cellText(line));
        boolean more = moreLinesBelow(line.place());
        if (alone
                && firstText(line.place()).matches("\\d{1,2}\\s*[-–.):]\\s*\\p{L}.{0,30}")
                && isLineBelow(line.place())) {
            return RowKind.PHASE;
        }
        if (!alone && (!line.cas().isEmpty() || line.names().size() > 1) && more) {
            return RowKind.LINE;
        }
        if (rows.stream().noneMatch(row -> row.kind() == RowKind.LINE)
                && more
                && table.heads().isEmpty()) {
            return RowKind.TITLE;
        }
        boolean sentence = name.length() > LONGEST_HEADING || name.endsWith(".") || name.matches("\\d+[.)].*");
        if (afterTotal() && more && alone && !sentence) {
            return RowKind.TITLE;
        }
        if (!more || sentence || !alone) {
            return RowKind.NOTE;
        }
        return isLineBelow(line.place()) && (isSetOff(line.place()) || phasesAreBareNames())
                ? RowKind.PHASE
                : RowKind.LINE;
    }

    /** Whether the columns of phases or of numbers count this row among the ingredients. */
    private boolean isCounted(Row line) {
        boolean phase = !line.phase().isEmpty() && !line.phase().equals("-");
        boolean number = !table.text(line.place(), Meaning.NUMBER).isEmpty();
        return (phase || number) && !afterTotal() && rows.stream().anyMatch(row -> row.kind() == RowKind.LINE);
    }

    private static boolean isTalk(String name) {
        return name.length() > LONGEST_HEADING || Talk.is(name);
    }

    private boolean phasesAreBareNames() {
        return rows.stream()
                .anyMatch(row -> row.kind() == RowKind.PHASE
                        && !row.names().isEmpty()
                        && row.text().equals(row.names().get(0)));
    }

    /** One text in front of the column of names, right above a line: the name of a phase over the width of the table. */
    private boolean isBand(Row line) {
        int nameAt = table.names().isEmpty() ? 0 : table.names().get(0).place();
        String first = firstText(line.place());
        boolean inFront = java.util.stream.IntStream.range(0, nameAt)
                .anyMatch(place -> table.grid().cell(line.place(), place).text().equals(first));
        return !first.isEmpty() && inFront && line.text().equals(first) && isLineBelow(line.place());
    }

    /** Nothing but words in the first row of a table of which no heading is known: headings in words that are not known. */
    private boolean isUnknownHeading(Row line) {
        List<Cell> cells = table.columns(Meaning.AMOUNT).stream()
                .map(column -> table.grid().cell(line.place(), column.place()))
                .filter(cell -> !cell.isBlank())
                .toList();
        return table.heads().isEmpty()
                && RowWords.title(firstText(line.place())).isEmpty()
                && !RowWords.isFact(firstText(line.place()))
                && rows.stream().noneMatch(row -> row.kind() == RowKind.LINE || row.kind() == RowKind.PHASE)
                && !cells.isEmpty()
                && cells.stream()
                        .allMatch(
                                cell -> cell.number().isEmpty() && !cell.text().matches(".*\\d.*"))
                && !line.hasAmount()
                && isLineBelow(line.place());
    }

    /** Whether a row looks like a heading: the first one, or after an empty row, or ended by a colon. */
    private boolean isSetOff(int place) {
        boolean first = rows.stream().noneMatch(row -> row.kind() == RowKind.LINE);
        boolean gap = !rows.isEmpty()
                && (rows.get(rows.size() - 1).kind() == RowKind.BLANK
                        || rows.get(rows.size() - 1).kind() == RowKind.SUBTOTAL);
        return first
                || gap
                || firstText(place).endsWith(":")
                || firstText(place).equals(firstText(place).toUpperCase(java.util.Locale.ROOT));
    }

    private String cellText(Row line) {
        return table.names().isEmpty()
                ? line.text()
                : table.grid().cell(line.place(), table.names().get(0).place()).text();
    }

    /** Whether the lines above make up a product, so that what follows is talk about it. */
    private boolean isWholeSoFar() {
        BigDecimal sum = rows.stream()
                .filter(row -> row.kind() == RowKind.LINE && row.hasAmount())
                .map(row -> row.figures().get(0).middle())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return afterTotal() || isNear(sum, BigDecimal.valueOf(100));
    }

    private boolean afterTotal() {
        return rows.stream()
                .filter(row -> row.kind() == RowKind.TOTAL || row.kind() == RowKind.LINE)
                .reduce((before, after) -> after)
                .filter(row -> row.kind() == RowKind.TOTAL)
                .isPresent();
    }

    private boolean moreLinesBelow(int place) {
        for (int row = place + 1; row <= table.last(); row++) {
            Row line = line(row);
            if (line.hasAmount()
                    && !line.names().isEmpty()
                    && !RowWords.isTotal(firstText(row))
                    && !RowWords.isTotal(line.names().get(0))
                    && !RowWords.isFact(firstText(row))) {
                return true;
            }
        }
        return false;
    }

    private boolean isLineBelow(int place) {
        Row next = place + 1 <= table.last() ? line(place + 1) : plain(place, RowKind.BLANK);
        return next.hasAmount() && !next.names().isEmpty();
    }

    /** A figure without a name: the sum of what stands above, or something that was forgotten. */
    private RowKind unnamed(Row line) {
        for (int i = 0; i < line.figures().size(); i++) {
            Figure figure = line.figures().get(i);
            if (figure.isNumber() && isNear(figure.middle(), sumAbove(i, false))) {
                return RowKind.TOTAL;
            }
            if (figure.isNumber() && isNear(figure.middle(), sumAbove(i, true))) {
                return RowKind.SUBTOTAL;
            }
            if (figure.isNumber() && isNear(figure.middle(), BigDecimal.valueOf(100)) && hasToWhole(i)) {
                return RowKind.TOTAL;
            }
        }
        return RowKind.LINE;
    }

    /** As much as all lines above together, and not what fills them up to 100: a total, in whatever language. */
    private boolean isTotalByValue(Row line) {
        long lines = rows.stream().filter(row -> row.kind() == RowKind.LINE).count();
        if (lines < 3) {
            return false;
        }
        for (int i = 0; i < line.figures().size(); i++) {
            Figure figure = line.figures().get(i);
            BigDecimal above = sumAbove(i, false);
            boolean fills = isNear(above.add(figure.middle()), BigDecimal.valueOf(100))
                    || isNear(above.add(figure.middle()), BigDecimal.ONE);
            if (figure.kind() == Figure.Kind.EXACT && isNear(figure.middle(), above) && !fills) {
                return true;
            }
        }
        return false;
    }

    private boolean hasToWhole(int column) {
        return rows.stream()
                .filter(row -> row.kind() == RowKind.LINE)
                .anyMatch(row -> row.figures().get(column).kind() == Figure.Kind.TO_WHOLE
                        || row.figures().get(column).kind() == Figure.Kind.AS_NEEDED);
    }

    private BigDecimal sumAbove(int column, boolean sincePhase) {
        BigDecimal sum = BigDecimal.ZERO;
        int count = 0;
        for (int i = rows.size() - 1; i >= 0; i--) {
            RowKind kind = rows.get(i).kind();
            boolean stops = kind == RowKind.TOTAL
                    || sincePhase && (kind == RowKind.PHASE || kind == RowKind.SUBTOTAL || kind == RowKind.BLANK);
            if (stops && count > 0) {
                break;
            }
            if (kind == RowKind.LINE) {
                sum = sum.add(rows.get(i).figures().get(column).middle());
                count++;
            }
        }
        return count > 1 ? sum : BigDecimal.valueOf(-1);
    }

    private static boolean isNear(BigDecimal one, BigDecimal other) {
        return one.subtract(other).abs().compareTo(NEAR.max(one.abs().movePointLeft(3))) <= 0;
    }

    /** The row read as an ingredient, whatever it turns out to be. */
    private Row line(int place) {
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

    private Row plain(int place, RowKind kind) {
        String text = kind == RowKind.TITLE && text(place).isEmpty() ? textInFront(place) : text(place);
        return new Row(place, kind, "", List.of(), "", "", text, List.of(), List.of());
    }

    /** A title may stand in a first column that holds nothing else. */
    private String textInFront(int place) {
        int left = table.columns().stream().mapToInt(Column::place).min().orElse(0);
        return left == 1 ? table.grid().cell(place, 0).text() : "";
    }

    /** All that stands in the columns of this table, left to right. */
    private String text(int place) {
        return table.columns().stream()
                .map(column -> table.grid().cell(place, column.place()))
                .filter(cell -> !cell.isBlank() && !cell.is(Cell.Trait.MERGED))
                .map(Cell::text)
                .collect(Collectors.joining(" "));
    }

    private String firstText(int place) {
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
