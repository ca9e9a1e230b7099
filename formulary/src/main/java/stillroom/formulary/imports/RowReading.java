package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Says of each row of a table what it is. Rows are judged downwards: what a row is may depend on those above. */
final class RowReading {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private final Table table;
    private final Terms terms;
    private final RowCells cells;
    private final RowsAbove above = new RowsAbove();

    RowReading(Table table, Terms terms) {
        this.table = table;
        this.terms = terms;
        this.cells = new RowCells(table, terms);
    }

    List<Row> read() {
        table.titles().forEach(row -> above.add(cells.plain(row, RowKind.TITLE)));
        int from = table.heads().stream().mapToInt(row -> row).min().orElse(table.first());
        List<Row> asLines = new ArrayList<>();
        for (int place = from; place <= table.last(); place++) {
            asLines.add(cells.line(place));
        }
        RowSight sight = new RowSight(table, terms, cells, above, asLines);
        RowJudge judge = new RowJudge(sight, asLines);
        for (Row line : asLines) {
            above.add(table.heads().contains(line.place()) ? head(line.place()) : row(line, judge, sight));
        }
        return withoutTitleLine(above.rows());
    }

    private Row head(int place) {
        String text = cells.text(place);
        String first = text.isEmpty() ? "" : cells.firstText(place);
        long times = table.grid().rows().get(place).stream()
                .filter(cell -> cell.text().equals(first))
                .count();
        boolean announced = HeadingWords.read(0, first)
                .map(column -> column.meaning() == Meaning.PHASE)
                .orElse(false);
        boolean oneOfSeveral = table.heads().size() > 1
                && table.heads().stream().map(cells::firstText).distinct().count()
                        == table.heads().size()
                && HeadingWords.read(0, first).isEmpty();
        boolean alone = table.heads().size() == 1 && table.phase().isEmpty() && !RowWords.isPhaseForCertain(first);
        return (RowWords.isPhaseAlone(first) && !alone || oneOfSeveral) && times < 2 && !announced
                ? new Row(place, RowKind.PHASE, first, List.of(), "", "", text, List.of(), List.of())
                : cells.plain(place, RowKind.HEADING);
    }

    private Row row(Row line, RowJudge judge, RowSight sight) {
        RowKind told = terms.guidance().rows().get(line.place());
        RowKind kind = told != null ? told : judge.kind(line);
        String phase = kind == RowKind.PHASE ? phaseWords(line) : line.phase();
        List<Flag> flags = new ArrayList<>(line.flags());
        boolean plain = RowWords.isPhaseAlone(phase) || line.hasAmount() || sight.isAnnouncement(line);
        if (told == null && kind == RowKind.PHASE && !plain) {
            flags.add(Flag.doubt("\"" + phase + "\" has no amount; it is taken as the name of a phase."));
        }
        return new Row(
                line.place(), kind, phase, line.names(), line.cas(), line.note(), line.text(), line.figures(), flags);
    }

    private static String phaseWords(Row line) {
        return line.names().isEmpty()
                ? (line.phase().isEmpty() ? line.text() : line.phase())
                : line.names().get(0);
    }

    /** "Toner version 7" above lines that make 100 without it is a title and no 7 % of anything. */
    private List<Row> withoutTitleLine(List<Row> rows) {
        List<Row> lines =
                rows.stream().filter(row -> row.kind() == RowKind.LINE).toList();
        if (!cells.bareInline() || lines.size() < 3 || !lines.get(0).hasAmount()) {
            return List.copyOf(rows);
        }
        Row first = lines.get(0);
        Figure figure = first.figures().get(0);
        boolean bare = figure.unit().isEmpty() && SumRows.isNear(sum(lines, false, figure), HUNDRED);
        boolean whole = figure.unit().isPresent() && SumRows.isNear(sum(lines, true, figure), figure.middle());
        boolean known =
                !first.names().isEmpty() && terms.knownName().test(first.names().get(0));
        List<Row> judged = new ArrayList<>(rows);
        if (figure.isNumber()
                && (bare || whole)
                && !known
                && !terms.guidance().rows().containsKey(first.place())) {
            judged.set(judged.indexOf(first), cells.plain(first.place(), RowKind.TITLE));
        }
        return List.copyOf(judged);
    }

    /** What the lines below the first come to, all or those in its unit: "Lotion (200 g)" above 200 g is a title. */
    private static BigDecimal sum(List<Row> lines, boolean sameUnit, Figure first) {
        return lines.stream()
                .skip(1)
                .filter(Row::hasAmount)
                .map(row -> row.figures().get(0))
                .filter(figure -> !sameUnit || figure.unit().equals(first.unit()))
                .map(Figure::middle)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
