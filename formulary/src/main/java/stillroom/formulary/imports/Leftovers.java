package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What stands among the lines and was made nothing of, though it may be meant: figures, names, columns. */
record Leftovers(Table table, List<Row> segment, int main, Terms terms) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal NEAR = new BigDecimal("0.05");
    private static final double ALIKE = 0.02;
    private static final int LONGEST_NAME = 40;

    List<Flag> judge() {
        List<Flag> flags = new ArrayList<>();
        int first = firstLine();
        int last = lastLine();
        for (int i = first + 1; i < segment.size(); i++) {
            Row row = segment.get(i);
            if (i < last && isFigureLost(i)) {
                flags.add(Flag.doubt("Row " + (row.place() + 1) + " (\"" + row.text()
                        + "\") holds a figure among the amounts that was left out."));
            } else if (isNameLost(i)) {
                flags.add(Flag.doubt("Row " + (row.place() + 1) + " (\"" + row.text()
                        + "\") was left out; it may be an ingredient without an amount."));
            }
        }
        rivals(flags);
        totalsByValue(flags);
        unheaded(flags);
        inFront(flags);
        codes(flags);
        if (lines().size() == 1) {
            flags.add(Flag.doubt("There is one line only; this is perhaps no formula."));
        }
        return flags;
    }

    private int firstLine() {
        return IntStream.range(0, segment.size())
                .filter(i -> segment.get(i).kind() == RowKind.LINE)
                .findFirst()
                .orElse(segment.size());
    }

    private int lastLine() {
        return IntStream.range(0, segment.size())
                .filter(i -> segment.get(i).kind() == RowKind.LINE)
                .max()
                .orElse(-1);
    }

    private boolean isFigureLost(int i) {
        Row row = segment.get(i);
        Figure figure = figure(row);
        return switch (row.kind()) {
            case NOTE, TITLE -> figure.isNumber();
            case PHASE -> figure.isNumber() && !isSumBelow(i, figure.middle());
            case LINE, TOTAL, SUBTOTAL, HEADING, BLANK, LEFT_OUT -> false;
        };
    }

    /** A heading of a phase may state the sum of the phase. */
    private boolean isSumBelow(int place, BigDecimal stated) {
        BigDecimal sum = BigDecimal.ZERO;
        boolean open = false;
        for (int i = place + 1; i < segment.size() && segment.get(i).kind() != RowKind.PHASE; i++) {
            boolean line = segment.get(i).kind() == RowKind.LINE;
            open = open || line && !figure(segment.get(i)).isNumber();
            sum = line ? sum.add(figure(segment.get(i)).middle()) : sum;
        }
        return open || isNear(sum, stated);
    }

    /** A short text right below a line, before any total. */
    private boolean isNameLost(int i) {
        Row row = segment.get(i);
        String name = row.names().isEmpty() ? "" : row.names().get(0);
        return row.kind() == RowKind.NOTE
                && segment.get(i - 1).kind() == RowKind.LINE
                && segment.subList(0, i).stream().noneMatch(before -> before.kind() == RowKind.TOTAL)
                && !name.isEmpty()
                && name.length() <= LONGEST_NAME
                && !Talk.is(name)
                && !RowWords.isFact(name)
                && !RowWords.isMethod(name)
                && !RowWords.isList(name)
                && terms.guidance().rows().get(row.place()) == null;
    }

    /** A column of unknown meaning whose figures make 100 as well and are not those that were taken. */
    private void rivals(List<Flag> flags) {
        for (Column column : table.columns(Meaning.LEFT_OUT)) {
            boolean decided = terms.guidance().columns().containsKey(column.place());
            if (column.guessed() && !decided && isNear(sum(column), HUNDRED) && !isAlike(column)) {
                flags.add(Flag.doubt("The column \"" + column.heading()
                        + "\" was left out, though its figures add up to 100 as well."));
            }
        }
    }

    /** Words in front of the names, or numbers that group the lines, of which nothing was made: perhaps phases. */
    private void inFront(List<Flag> flags) {
        int nameAt = table.names().stream().mapToInt(Column::place).min().orElse(0);
        for (Column column : table.columns()) {
            boolean unread = column.meaning() == Meaning.LEFT_OUT
                    || column.meaning() == Meaning.NOTE
                    || column.meaning() == Meaning.AMOUNT;
            long words = lines().stream()
                    .filter(row -> table.grid()
                                    .cell(row.place(), column.place())
                                    .text()
                                    .matches(".*\\p{L}.*")
                            && beside(row, column).isEmpty())
                    .count();
            boolean groups = column.meaning() == Meaning.LEFT_OUT
                    && Content.counts(table.grid(), column.place(), table.first(), table.last());
            if (unread
                    && (column.place() < nameAt && words > 0 || groups)
                    && table.column(Meaning.PHASE).isEmpty()
                    && !terms.guidance().columns().containsKey(column.place())) {
                flags.add(Flag.doubt(
                        "The column \"" + Grid.letters(column.place()) + "\" was left out; it may hold the phases."));
            }
        }
    }

    /** Names without words are perhaps the numbers of articles. */
    private void codes(List<Flag> flags) {
        long codes = lines().stream()
                .filter(row -> row.names().stream().noneMatch(name -> name.matches(".*\\p{L}{3}.*")))
                .count();
        if (codes * 2 > lines().size()) {
            flags.add(Flag.doubt("What is taken for names looks like numbers of articles."));
        }
    }

    private void totalsByValue(List<Flag> flags) {
        segment.stream()
                .filter(row -> row.kind() == RowKind.TOTAL
                        && !row.names().isEmpty()
                        && !RowWords.isTotal(row.names().get(0))
                        && !RowWords.isTotal(row.text())
                        && terms.guidance().rows().get(row.place()) == null)
                .forEach(row -> flags.add(Flag.doubt("Row " + (row.place() + 1) + " (\"" + row.text()
                        + "\") is taken for the total, as it is the sum of the lines above.")));
    }

    /** Several columns of figures without headings, or names that come again behind the first figures. */
    private void unheaded(List<Flag> flags) {
        if (!table.heads().isEmpty()) {
            return;
        }
        List<Column> amounts = table.columns(Meaning.AMOUNT);
        int firstAmount = amounts.isEmpty() ? Integer.MAX_VALUE : amounts.get(0).place();
        boolean namesAgain = amounts.size() > 1
                && table.columns().stream()
                        .anyMatch(column -> column.place() > firstAmount
                                && column.place()
                                        < amounts.get(amounts.size() - 1).place()
                                && (column.meaning().names()
                                        || column.meaning() == Meaning.NOTE
                                        || column.meaning() == Meaning.LEFT_OUT));
        if (namesAgain) {
            flags.add(
                    Flag.doubt(
                            "Words stand between the columns of figures and no headings above them; these are perhaps two formulas."));
        }
    }

    private BigDecimal sum(Column column) {
        return lines().stream()
                .map(row -> beside(row, column).map(Figure::middle).orElse(BigDecimal.ZERO))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private boolean isAlike(Column column) {
        List<Double> ratios = lines().stream()
                .filter(row -> figure(row).middle().signum() > 0
                        && beside(row, column)
                                .filter(figure -> figure.middle().signum() > 0)
                                .isPresent())
                .map(row -> beside(row, column).orElseThrow().middle().doubleValue()
                        / figure(row).middle().doubleValue())
                .sorted()
                .toList();
        return !ratios.isEmpty() && ratios.get(ratios.size() - 1) / ratios.get(0) - 1 <= ALIKE;
    }

    private Optional<Figure> beside(Row row, Column column) {
        return Optional.of(FigureReading.read(table.grid().cell(row.place(), column.place()), terms.mark()))
                .filter(Figure::isNumber);
    }

    private List<Row> lines() {
        return segment.stream().filter(row -> row.kind() == RowKind.LINE).toList();
    }

    private Figure figure(Row row) {
        return main < row.figures().size() ? row.figures().get(main) : Figure.NOTHING;
    }

    private static boolean isNear(BigDecimal one, BigDecimal other) {
        return one.subtract(other).abs().compareTo(NEAR) <= 0;
    }
}
