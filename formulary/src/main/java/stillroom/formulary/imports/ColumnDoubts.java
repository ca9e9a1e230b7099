package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** What is not proven about the columns of a formula: that these are its names, its amounts, its phases, and that no other is. */
record ColumnDoubts(Table table, List<Row> segment, int main, Terms terms, Map<Integer, Content> contents) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal NEAR = new BigDecimal("0.05");
    private static final double ALIKE = 0.02;

    static ColumnDoubts of(Table table, List<Row> segment, int main, Terms terms) {
        List<Integer> lines = segment.stream()
                .filter(row -> row.kind() == RowKind.LINE)
                .map(Row::place)
                .toList();
        Map<Integer, Content> contents = new HashMap<>();
        table.columns()
                .forEach(column -> contents.put(column.place(), Content.of(table, terms, lines, column.place())));
        return new ColumnDoubts(table, segment, main, terms, Map.copyOf(contents));
    }

    List<Flag> judge() {
        List<Flag> flags = new ArrayList<>();
        names(flags);
        amounts(flags);
        phases(flags);
        rivals(flags);
        unheaded(flags);
        inFront(flags);
        codes(flags);
        elsewhere(flags);
        mixed(flags);
        counted(flags);
        return flags;
    }

    private Content content(Column column) {
        return Objects.requireNonNull(contents.get(column.place()));
    }

    private boolean isDecided(Column column) {
        return terms.guidance().columns().containsKey(column.place());
    }

    /** Names are proven by a heading or by most of them being names of materials. */
    private void names(List<Flag> flags) {
        List<Column> names = table.names();
        boolean headed = names.stream().anyMatch(column -> !column.guessed() || isDecided(column));
        boolean known = lines().stream()
                                .filter(row -> row.names().stream().anyMatch(terms.knownName()))
                                .count()
                        * 2
                >= lines().size();
        Optional<Column> other = table.columns().stream()
                .filter(column -> column.guessed()
                        && !column.meaning().names()
                        && !isDecided(column)
                        && content(column).isKnown())
                .findFirst();
        if (!known && other.isPresent()) {
            flags.add(Flag.doubt("The column \"" + Grid.letters(other.get().place())
                    + "\" holds names of materials that are known and was not taken for the names."));
        } else if (!known && !headed && !isOnlyText()) {
            flags.add(Flag.doubt(
                    "No heading says where the names stand, and most of what was taken for them is not known."));
        }
    }

    /** Whether no other column holds words that could be the names. */
    private boolean isOnlyText() {
        return table.columns().stream()
                        .filter(column -> content(column).words() * 2 >= lines().size())
                        .count()
                == 1;
    }

    /** Amounts under no heading are proven by adding up, or by being the only figures. */
    private void amounts(List<Flag> flags) {
        List<Column> amounts = table.columns(Meaning.AMOUNT);
        boolean guessed = main < amounts.size() && amounts.get(main).guessed() && !isDecided(amounts.get(main));
        boolean several = table.columns().stream()
                        .filter(column -> column.guessed() && content(column).isMostlyFigures())
                        .count()
                > 1;
        boolean two = amounts.stream()
                        .filter(column -> column.guessed()
                                && !isDecided(column)
                                && column.heading().isEmpty()
                                        == amounts.get(main).heading().isEmpty())
                        .filter(column -> !column.equals(amounts.get(main)) && !isAlike(column))
                        .count()
                > 0;
        if (guessed && two && closes()) {
            flags.add(Flag.doubt("Several columns of figures add up; no heading says which holds the amounts."));
        }
        if (guessed && several && !closes()) {
            flags.add(Flag.doubt("No heading says which column holds the amounts, and nothing adds up to show it."));
        }
    }

    private boolean closes() {
        List<Figure> figures = lines().stream().map(this::figure).toList();
        BigDecimal sum = figures.stream().map(Figure::middle).reduce(BigDecimal.ZERO, BigDecimal::add);
        boolean shares = figures.stream()
                .anyMatch(figure -> figure.kind() == Figure.Kind.TO_WHOLE
                        || figure.unit().map(Unit::isShare).orElse(false));
        boolean stated = segment.stream()
                .anyMatch(row ->
                        (row.kind() == RowKind.TOTAL || row.kind() == RowKind.SUBTOTAL || row.kind() == RowKind.PHASE)
                                && figure(row).isNumber());
        return shares
                || stated
                || isNear(sum, HUNDRED)
                || sum.subtract(BigDecimal.ONE).abs().compareTo(new BigDecimal("0.0005")) <= 0;
    }

    /** Phases are proven by a heading over texts that group the lines, or by letters and the like. */
    private void phases(List<Flag> flags) {
        table.column(Meaning.PHASE).filter(column -> !isDecided(column)).ifPresent(column -> {
            Content content = content(column);
            boolean letters = content.isMostlyPhases() || content.runs() && content.phases() * 2 >= content.filled();
            if (column.guessed() && !letters) {
                flags.add(Flag.doubt("The column \"" + Grid.letters(column.place())
                        + "\" is taken for the phases, as its texts group the lines."));
            } else if (!letters && content.distinct() > 1 && (!content.runs() || content.known() > 1)) {
                flags.add(Flag.doubt("The texts under \"" + column.heading()
                        + "\" do not group the lines; they are perhaps no phases."));
            }
        });
        if (!hasPhases()) {
            table.columns().stream()
                    .filter(column -> column.guessed()
                            && !isDecided(column)
                            && (column.meaning() == Meaning.LEFT_OUT || column.meaning() == Meaning.NOTE)
                            && isPerhapsPhases(content(column)))
                    .findFirst()
                    .ifPresent(column -> flags.add(perhapsPhases(column)));
        }
    }

    private boolean hasPhases() {
        return table.column(Meaning.PHASE).isPresent() || segment.stream().anyMatch(row -> row.kind() == RowKind.PHASE);
    }

    private static boolean isPerhapsPhases(Content content) {
        return content.isGrouping() && content.words() + content.phases() > 0 && content.figures() == 0;
    }

    private static Flag perhapsPhases(Column column) {
        return Flag.doubt("The column \"" + Grid.letters(column.place()) + "\" was left out; it may hold the phases.");
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
            boolean coded = content(column).isCodes()
                    && content(column).distinct() * 2 > content(column).filled();
            boolean read = column.meaning() == Meaning.AMOUNT
                    && content(column).figures() * 2 >= content(column).filled();
            boolean words = !coded
                    && !read
                    && column.place() < nameAt
                    && content(column).words() + content(column).phases() > 0
                    && content(column).runs();
            boolean groups = column.meaning() == Meaning.LEFT_OUT
                    && Content.counts(
                            table.grid(),
                            column.place(),
                            lines().stream().map(Row::place).toList());
            if (unread
                    && (words || groups)
                    && !hasPhases()
                    && !terms.guidance().columns().containsKey(column.place())) {
                flags.add(perhapsPhases(column));
            }
        }
    }

    /** Lines without an amount that have figures in columns of which nothing was made. */
    private void elsewhere(List<Flag> flags) {
        long found = lines().stream()
                .filter(row -> !row.hasAmount()
                        && table.columns().stream()
                                .anyMatch(column -> column.meaning() != Meaning.NUMBER
                                        && column.guessed()
                                        && !isDecided(column)
                                        && beside(row, column).isPresent()))
                .count();
        if (found > 1) {
            flags.add(Flag.doubt(
                    "Lines without an amount have figures in other columns; these are perhaps the amounts."));
        }
    }

    /** Figures in a column of words, several times: perhaps the columns stand otherwise in that part of the sheet. */
    private void mixed(List<Flag> flags) {
        boolean found = table.columns().stream()
                .filter(column -> column.meaning() == Meaning.FUNCTION
                        || column.meaning() == Meaning.NOTE
                        || column.meaning() == Meaning.PHASE
                        || column.meaning().names())
                .filter(column -> !isDecided(column))
                .map(this::content)
                .anyMatch(content -> content.figures() > 2 && content.words() > 0 && !content.isCodes());
        if (found) {
            flags.add(Flag.doubt(
                    "A column holds words in some lines and figures in others; its meaning perhaps changes."));
        }
    }

    /** 1, 2, 3, 4 are numbers of lines and hardly amounts. */
    private void counted(List<Flag> flags) {
        int run = 0;
        BigDecimal before = BigDecimal.ZERO;
        for (Row line : lines()) {
            boolean next = figure(line).isNumber()
                    && figure(line).middle().subtract(before).compareTo(BigDecimal.ONE) == 0;
            before = figure(line).middle();
            run = next ? run + 1 : 0;
            if (run == 3) {
                flags.add(
                        Flag.doubt("Amounts that go up by 1 from line to line are perhaps the numbers of the lines."));
                return;
            }
        }
    }

    /** Names without words are perhaps the numbers of articles. */
    private void codes(List<Flag> flags) {
        long codes = lines().stream()
                .filter(row -> row.names().stream().noneMatch(name -> name.matches(".*\\p{L}{3}.*")))
                .count();
        if (codes > 1) {
            flags.add(Flag.doubt("What is taken for names looks like numbers of articles."));
        }
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
