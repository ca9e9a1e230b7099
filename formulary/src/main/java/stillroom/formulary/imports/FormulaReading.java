package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stillroom.formulary.formula.Amount;

/** Makes formulas out of the rows of a table. */
record FormulaReading(Table table, List<Row> rows, Terms terms, String named) {
    FormulaReading(Table table, List<Row> rows, Terms terms) {
        this(table, rows, terms, "");
    }

    List<ReadFormula> read() {
        List<ReadFormula> formulas = new ArrayList<>();
        List<Row> joined = ColumnPerPhase.joined(table, rows);
        if (joined != rows) {
            return new FormulaReading(table, joined, terms, named).read();
        }
        List<FormulaColumn.Part> parts = new FormulaColumn(table, rows).parts();
        for (FormulaColumn.Part part : parts) {
            new FormulaReading(table, part.rows(), terms, part.title()).read().forEach(formulas::add);
        }
        for (Variant variant : parts.isEmpty() ? new Variants(table, rows).find() : List.<Variant>of()) {
            for (List<Row> segment : new Segments(rows, variant.main()).find()) {
                formula(segment, variant).ifPresent(formulas::add);
            }
        }
        return formulas;
    }

    private Optional<ReadFormula> formula(List<Row> segment, Variant variant) {
        List<Row> lines = segment.stream()
                .filter(row -> row.kind() == RowKind.LINE)
                .filter(row -> !variant.many() || isIn(figure(row, variant.main())))
                .toList();
        if (lines.stream()
                .noneMatch(row -> figure(row, variant.main()).isAmount()
                        || variant.checks().stream()
                                .anyMatch(place -> figure(row, place).isAmount()))) {
            return Optional.empty();
        }
        Titles titles = new Titles(table.grid(), segment);
        List<Figure> figures =
                lines.stream().map(row -> figure(row, variant.main())).toList();
        Optional<Column> column = column(variant.main());
        Optional<BigDecimal> stated = stated(segment, variant.main());
        UnitGuess unit = unit(figures, column, stated);
        Optional<BigDecimal> batch = column.flatMap(Column::whole).or(() -> titles.batch(terms.mark()));
        Shares shares = Shares.of(figures, unit.unit(), batch, statedIn(segment, variant.main(), unit.unit()));
        Checks checks = Checks.of(lines, variant, shares);
        List<Optional<BigDecimal>> percents = checks.completed();
        Amounts.Made made = Amounts.of(lines, checks.figures(figures), percents);
        List<Flag> flags = new ArrayList<>(unit.flags());
        if (variant.old()) {
            flags.add(Flag.doubt("By its heading \"" + variant.heading() + "\" this is an old state of the formula."));
        }
        flags.addAll(shares.flags());
        Confirmed.judge(
                        figures,
                        unit.unit(),
                        batch.isPresent() || !variant.checks().isEmpty(),
                        segment,
                        variant.main())
                .ifPresent(flags::add);
        flags.addAll(ColumnDoubts.of(table, segment, variant.main(), terms));
        flags.addAll(new Leftovers(table, segment, variant.main(), terms).judge());
        LineDoubts doubts = new LineDoubts(segment, variant.main(), unit.unit(), terms);
        boolean guessed =
                column.flatMap(Column::unit).isEmpty() && !unit.flags().isEmpty();
        if ((!unit.unit().isShare() || guessed) && doubts.any()) {
            flags.add(
                    Flag.doubt(
                            "It is not sure whether each row that was taken for a line is one; the shares of all others depend on it."));
        }
        flags.addAll(Sums.judge(segment, variant.main(), unit.unit(), made.amounts()));
        return Optional.of(new ReadFormula(
                title(named.isEmpty() ? titled(titles) : named, variant),
                Optional.of(unit.unit()),
                lines(segment, lines, variant, shares, checks, made, doubts),
                notes(segment),
                flags));
    }

    private UnitGuess unit(List<Figure> figures, Optional<Column> column, Optional<BigDecimal> stated) {
        Optional<Unit> byMaker = terms.guidance().unit();
        return UnitGuess.of(byMaker.or(() -> column.flatMap(Column::unit)), byMaker.isPresent(), figures, stated);
    }

    private static boolean isIn(Figure figure) {
        return figure.kind() != Figure.Kind.NONE
                && !(figure.isNumber() && figure.middle().signum() == 0);
    }

    private static Figure figure(Row row, int place) {
        return place < row.figures().size() ? row.figures().get(place) : Figure.NOTHING;
    }

    private Optional<Column> column(int place) {
        List<Column> amounts = table.columns(Meaning.AMOUNT);
        return place < amounts.size() ? Optional.of(amounts.get(place)) : Optional.empty();
    }

    private static Optional<BigDecimal> stated(List<Row> segment, int place) {
        return segment.stream()
                .filter(row -> row.kind() == RowKind.TOTAL && figure(row, place).isNumber())
                .map(row -> figure(row, place).middle())
                .reduce((before, after) -> after);
    }

    /** The total in the unit of the column, where its row has one of its own. */
    private static Optional<BigDecimal> statedIn(List<Row> segment, int place, Unit unit) {
        return segment.stream()
                .filter(row -> row.kind() == RowKind.TOTAL && figure(row, place).isNumber())
                .map(row -> figure(row, place).middleIn(unit))
                .reduce((before, after) -> after);
    }

    /** The title may stand where the word "ingredient" would. */
    private String titled(Titles titles) {
        return !table.titles().isEmpty()
                ? titles.name()
                : table.names().stream()
                        .filter(Column::guessed)
                        .map(Column::heading)
                        .filter(heading -> !heading.isEmpty())
                        .findFirst()
                        .orElse(titles.name());
    }

    private static String title(String name, Variant variant) {
        if (!variant.isNamed()) {
            return name;
        }
        return name.isEmpty() ? variant.heading() : name + ", " + variant.heading();
    }

    private List<ReadLine> lines(
            List<Row> segment,
            List<Row> lines,
            Variant variant,
            Shares shares,
            Checks checks,
            Amounts.Made made,
            LineDoubts doubts) {
        List<ReadLine> read = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        String phase = table.phase();
        boolean counted = isCounted(lines);
        Leftovers leftovers = new Leftovers(table, segment, variant.main(), terms);
        PhaseDoubts phases = new PhaseDoubts(table, segment);
        int i = -1;
        for (int at = 0; at < segment.size(); at++) {
            Row row = segment.get(at);
            phase = counted && row.kind() == RowKind.LINE ? row.phase().substring(0, 1) : phase(row, phase);
            phases.pass(row);
            if (i + 1 >= lines.size() || lines.get(i + 1) != row) {
                continue;
            }
            i++;
            List<Flag> flags = new ArrayList<>(row.flags());
            flags.addAll(figure(row, variant.main()).flags());
            flags.addAll(shares.lineFlags().get(i));
            flags.addAll(checks.flags(i));
            flags.addAll(made.flags().get(i));
            flags.addAll(NameDoubts.of(row, phase, seen));
            flags.addAll(doubts.of(row));
            if (doubts.mayHeadPhase(row)) {
                phases.passPerhapsPhase(row);
            }
            leftovers.below(at).ifPresent(flags::add);
            phases.doubt(row, phase).ifPresent(flags::add);
            read.add(line(
                    row, variant, PhaseName.of(phase).shown(), made.amounts().get(i), flags));
        }
        return read;
    }

    /** A1, A2, B1: letters of phases with the number of the line in each. */
    private static boolean isCounted(List<Row> lines) {
        long kinds = lines.stream().map(Row::phase).distinct().count();
        return lines.size() > 2
                && kinds == lines.size()
                && lines.stream().allMatch(row -> row.phase().matches("[A-Za-z][-.]?\\d{1,2}"));
    }

    private static String phase(Row row, String before) {
        if (row.kind() == RowKind.TITLE) {
            return "";
        }
        boolean says = row.kind() == RowKind.PHASE || row.kind() == RowKind.LINE;
        return says && !row.phase().isEmpty() && !row.phase().equals("-") ? row.phase() : before;
    }

    private ReadLine line(Row row, Variant variant, String phase, Optional<Amount> amount, List<Flag> flags) {
        int nameAt = table.names().stream()
                .map(Column::place)
                .filter(place -> !table.grid().cell(row.place(), place).isBlank())
                .findFirst()
                .orElse(0);
        int amountAt = amountAt(row, variant, nameAt);
        return new ReadLine(
                row.place(),
                table.grid().address(row.place(), nameAt),
                table.grid().address(row.place(), amountAt),
                row.names(),
                row.cas(),
                table.grid().cell(row.place(), amountAt).text(),
                amount,
                phase,
                row.note(),
                flags);
    }

    private int amountAt(Row row, Variant variant, int nameAt) {
        int main = column(variant.main()).map(Column::place).orElse(nameAt);
        boolean elsewhere = row.figures().size() == 1
                && table.grid().cell(row.place(), main).isBlank();
        return !elsewhere
                ? main
                : table.columns(Meaning.AMOUNT).stream()
                        .map(Column::place)
                        .filter(place -> !table.grid().cell(row.place(), place).isBlank())
                        .findFirst()
                        .orElse(main);
    }

    /** What stands around the lines, then what is to be done with each phase where its name says so. */
    private List<String> notes(List<Row> segment) {
        Stream<String> around = segment.stream()
                .filter(row -> row.kind() == RowKind.NOTE || row.kind() == RowKind.TITLE)
                .map(Row::text)
                .filter(text -> !text.isEmpty());
        Stream<String> work = Stream.concat(
                        Stream.of(table.phase()),
                        segment.stream()
                                .filter(row -> row.kind() == RowKind.PHASE || row.kind() == RowKind.LINE)
                                .map(Row::phase))
                .map(PhaseName::of)
                .filter(phase -> !phase.instruction().isEmpty())
                .map(phase -> phase.shown() + ": " + phase.instruction())
                .distinct();
        return Stream.concat(around, work).toList();
    }
}
