package stillroom.formulary.imports;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Tells what the columns of a table mean: by their headings where these are known and the cells do not speak against it, otherwise
 * by what the cells hold. What the maker said goes first. Not thread-safe.
 */
final class ColumnRoles {
    private final Table table;
    private final Terms terms;
    private final Body body;
    private final List<Content> contents;
    private final List<Column> columns;

    private ColumnRoles(Table table, Terms terms, int left, int right) {
        this.table = table;
        this.terms = terms;
        this.body = Body.of(table, terms);
        this.contents = IntStream.rangeClosed(0, right).mapToObj(body::content).toList();
        this.columns = new ArrayList<>(table.columns());
        for (int place = left; place <= right; place++) {
            int at = place;
            if (isFilled(place) && columns.stream().noneMatch(column -> column.place() == at)) {
                columns.add(new Column(at, "", Meaning.LEFT_OUT, Optional.empty(), Optional.empty(), true));
            }
        }
        columns.sort(Comparator.comparingInt(Column::place));
    }

    private boolean isFilled(int place) {
        return IntStream.rangeClosed(table.first(), table.last())
                .anyMatch(row -> !table.grid().cell(row, place).isBlank());
    }

    /** The table with a meaning for each column from left to right. */
    static Table told(Table table, Terms terms, int left, int right) {
        ColumnRoles roles = new ColumnRoles(table, terms, left, right);
        roles.correctHeadings();
        roles.tellNames();
        roles.tellPhases();
        roles.tellUnits();
        roles.tellAmounts();
        roles.tellSecondNames();
        roles.leaveOutHidden();
        return roles.withGuidance();
    }

    private Content content(Column column) {
        return contents.get(column.place());
    }

    private boolean has(Predicate<Column> what) {
        return columns.stream().anyMatch(what);
    }

    private void change(Predicate<Column> which, Meaning meaning) {
        columns.replaceAll(column -> which.test(column) ? column.as(meaning) : column);
    }

    private static boolean isOpen(Column column) {
        return column.guessed() && column.meaning() == Meaning.LEFT_OUT;
    }

    /** A heading may mislead: a column "Part" that holds no figure is none of amounts, names that count 1, 2, 3 are none. */
    private void correctHeadings() {
        change(
                column -> column.meaning() == Meaning.NAME
                        && content(column).words() == 0
                        && content(column).serial(),
                Meaning.NUMBER);
        change(
                column -> column.meaning() == Meaning.AMOUNT
                        && content(column).filled() > 0
                        && content(column).figures() == 0
                        && content(column).isMostlyPhases(),
                Meaning.PHASE);
        change(column -> isOpen(column) && content(column).serial(), Meaning.NUMBER);
        change(column -> column.meaning() == Meaning.NUMBER && content(column).isMostlyPhases(), Meaning.PHASE);
        leaveOutCodes();
    }

    /** Numbers of articles beside proper names, and a name that stands beside many lines, are no names of ingredients. */
    private void leaveOutCodes() {
        Predicate<Column> names =
                column -> column.meaning().names() && content(column).words() > 0;
        Predicate<Column> coded = names.and(column -> content(column).isCodes());
        if (has(names.and(coded.negate())) || has(this::mayBeName)) {
            change(coded, Meaning.LEFT_OUT);
        }
        Predicate<Column> groups = names.and(
                column -> content(column).isGrouping() && content(column).distinct() > 1);
        if (has(names.and(groups.negate()))) {
            change(groups, Meaning.FORMULA);
        }
        boolean amounts = has(
                column -> column.meaning() == Meaning.AMOUNT && content(column).figures() > 0);
        change(
                column -> column.meaning() == Meaning.LEFT_OUT
                        && !column.guessed()
                        && !amounts
                        && HeadingWords.isShare(column.heading())
                        && body.closes(column.place()),
                Meaning.AMOUNT);
    }

    private boolean mayBeName(Column column) {
        Content content = content(column);
        return isOpen(column)
                && content.words() > 0
                && !content.isCodes()
                && !content.isMostlyFigures()
                && !content.isMostlyPhases()
                && !content.isUnits()
                && (content.known() > 0 || !content.isGrouping());
    }

    private void tellNames() {
        if (has(column -> column.meaning().names() && content(column).words() > 0)) {
            return;
        }
        columns.stream()
                .filter(column ->
                        mayBeName(column) || isOpen(column) && content(column).words() > 1 && !has(this::mayBeName))
                .max(Comparator.comparingInt((Column column) -> content(column).known())
                        .thenComparing(column -> content(column).distinct())
                        .thenComparing(column -> content(column).words())
                        .thenComparing(column -> -column.place()))
                .ifPresent(column -> columns.set(columns.indexOf(column), column.as(Meaning.NAME)));
    }

    private int nameAt() {
        return columns.stream()
                .filter(column -> column.meaning().names())
                .mapToInt(Column::place)
                .min()
                .orElse(0);
    }

    /** Letters of phases anywhere; other words in front of the names; numbers that only go up, under no heading of their own. */
    private void tellPhases() {
        if (has(column -> column.meaning() == Meaning.PHASE)) {
            return;
        }
        first(column -> isOpen(column)
                        && content(column).isMostlyPhases()
                        && content(column).figures() == 0)
                .or(() -> first(column -> isOpen(column) && isGrouping(column)))
                .or(() -> first(column -> isOpen(column) && counts(column)))
                .ifPresent(column -> columns.set(columns.indexOf(column), column.as(Meaning.PHASE)));
    }

    private Optional<Column> first(Predicate<Column> which) {
        return columns.stream().filter(which).findFirst();
    }

    private boolean isGrouping(Column column) {
        Content content = content(column);
        boolean each = content.filled() * 5 >= content.rows() * 4;
        return content.isGrouping()
                && !body.namesPhases()
                && content.words() > 0
                && content.figures() == 0
                && !content.isUnits()
                && (each || column.place() < nameAt() || content.phases() * 2 >= content.filled());
    }

    private boolean counts(Column column) {
        return Folding.of(column.heading()).matches("(ph?|f|st|gr?|tl?)?\\.?")
                && Content.counts(table.grid(), column.place(), body.rows());
    }

    private void tellUnits() {
        change(column -> isOpen(column) && content(column).isUnits(), Meaning.UNIT);
    }

    /** Beside amounts under a heading only those count that say the same, or shares where the heading says masses. */
    private void tellAmounts() {
        Predicate<Column> figures = column -> isOpen(column)
                && content(column).isMostlyFigures()
                && !content(column).isCodes();
        List<Column> headed = columns.stream()
                .filter(column ->
                        column.meaning() == Meaning.AMOUNT && content(column).figures() > 0)
                .toList();
        boolean shelf = has(column -> column.meaning().isOfTheShelf() && column.meaning() != Meaning.PRICE);
        if (!headed.isEmpty()) {
            boolean shares = headed.stream()
                    .anyMatch(column -> column.unit().map(Unit::isShare).orElse(false));
            change(
                    figures.and(column -> !shares && body.closes(column.place())
                            || headed.stream().anyMatch(one -> body.isAlike(one.place(), column.place()))),
                    Meaning.AMOUNT);
            return;
        }
        if (shelf) {
            return;
        }
        List<Column> closing = filtered(figures.and(column -> body.closes(column.place())));
        if (closing.isEmpty()) {
            List<Column> round = filtered(figures.and(column -> body.isRound(column.place())));
            closing = round.size() == 1 ? round : List.of();
        }
        tellUnheadedAmounts(figures, closing);
    }

    private List<Column> filtered(Predicate<Column> which) {
        return columns.stream().filter(which).toList();
    }

    private void tellUnheadedAmounts(Predicate<Column> figures, List<Column> closing) {
        change(
                figures.and(column -> closing.isEmpty()
                        || closing.contains(column)
                        || closing.stream().anyMatch(one -> body.isAlike(one.place(), column.place()))),
                Meaning.AMOUNT);
    }

    /** Names in another language: a text of its own for each line, beside the names or known itself. */
    private void tellSecondNames() {
        boolean named = has(column -> column.meaning() == Meaning.NAME);
        int nameAt = nameAt();
        change(
                column -> mayBeName(column) && content(column).isOwn() && column.place() == nameAt - 1 && !named,
                Meaning.NAME);
        change(
                column -> mayBeName(column)
                        && (content(column).isKnown()
                                || content(column).isOwn() && Math.abs(column.place() - nameAt) == 1
                                || content(column).isEachOwn()),
                Meaning.COMMON);
        change(
                column -> isOpen(column)
                        && column.heading().isEmpty()
                        && content(column).words() > 0
                        && !content(column).isCodes()
                        && table.heads().isEmpty(),
                Meaning.NOTE);
    }

    /** A hidden column of amounts beside one that is shown is an old one. */
    private void leaveOutHidden() {
        Predicate<Column> amounts = column -> column.meaning() == Meaning.AMOUNT;
        if (has(amounts.and(column -> content(column).figures() > 0 && !isHidden(column)))) {
            change(amounts.and(this::isHidden), Meaning.LEFT_OUT);
        }
    }

    private boolean isHidden(Column column) {
        return IntStream.rangeClosed(table.first(), table.last())
                .mapToObj(row -> table.grid().cell(row, column.place()))
                .filter(cell -> !cell.isBlank())
                .allMatch(cell -> cell.is(Cell.Trait.HIDDEN));
    }

    private Table withGuidance() {
        List<Column> decided = columns.stream()
                .map(column -> Optional.ofNullable(terms.guidance().columns().get(column.place()))
                        .map(column::as)
                        .orElse(column))
                .toList();
        return new Table(
                table.grid(), decided, table.titles(), table.heads(), table.first(), table.last(), table.phase());
    }
}
