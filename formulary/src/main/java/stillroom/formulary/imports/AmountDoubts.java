package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** What is not proven about the amounts of a formula: that this column holds them, and that no other does. */
record AmountDoubts(LineColumns seen) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    List<Flag> judge() {
        List<Flag> flags = new ArrayList<>();
        amounts(flags);
        rivals(flags);
        unheaded(flags);
        elsewhere(flags);
        mixed(flags);
        counted(flags);
        return flags;
    }

    /** Amounts under no heading are proven by adding up, or by being the only figures. */
    private void amounts(List<Flag> flags) {
        List<Column> amounts = seen.table().columns(Meaning.AMOUNT);
        boolean guessed = seen.main() < amounts.size()
                && amounts.get(seen.main()).guessed()
                && !seen.isDecided(amounts.get(seen.main()));
        boolean several = seen.table().columns().stream()
                        .filter(column ->
                                column.guessed() && seen.content(column).isMostlyFigures())
                        .count()
                > 1;
        boolean two = amounts.stream()
                        .filter(column -> column.guessed()
                                && !seen.isDecided(column)
                                && column.heading().isEmpty()
                                        == amounts.get(seen.main()).heading().isEmpty())
                        .filter(column -> !column.equals(amounts.get(seen.main())) && !seen.isAlike(column))
                        .count()
                > 0;
        if (guessed && two && seen.closes()) {
            flags.add(Flag.doubt("Several columns of figures add up; no heading says which holds the amounts."));
        }
        if (guessed && several && !seen.closes()) {
            flags.add(Flag.doubt("No heading says which column holds the amounts, and nothing adds up to show it."));
        }
    }

    /** A column of unknown meaning whose figures make 100 as well and are not those that were taken. */
    private void rivals(List<Flag> flags) {
        for (Column column : seen.table().columns(Meaning.LEFT_OUT)) {
            boolean decided = seen.terms().guidance().columns().containsKey(column.place());
            if (column.guessed()
                    && !decided
                    && LineColumns.isNear(seen.sum(column), HUNDRED)
                    && !seen.isAlike(column)) {
                flags.add(Flag.doubt("The column \"" + column.heading()
                        + "\" was left out, though its figures add up to 100 as well."));
            }
        }
    }

    /** Several columns of figures without headings, or names that come again behind the first figures. */
    private void unheaded(List<Flag> flags) {
        if (!seen.table().heads().isEmpty()) {
            return;
        }
        List<Column> amounts = seen.table().columns(Meaning.AMOUNT);
        int firstAmount = amounts.isEmpty() ? Integer.MAX_VALUE : amounts.get(0).place();
        boolean namesAgain = amounts.size() > 1
                && seen.table().columns().stream()
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

    /** Lines without an amount that have figures in columns of which nothing was made. */
    private void elsewhere(List<Flag> flags) {
        long found = seen.lines().stream()
                .filter(row -> !row.hasAmount()
                        && seen.table().columns().stream()
                                .anyMatch(column -> column.meaning() != Meaning.NUMBER
                                        && column.guessed()
                                        && !seen.isDecided(column)
                                        && seen.beside(row, column).isPresent()))
                .count();
        if (found > 1) {
            flags.add(Flag.doubt(
                    "Lines without an amount have figures in other columns; these are perhaps the amounts."));
        }
    }

    /** Figures in a column of words, several times: perhaps the columns stand otherwise in that part of the sheet. */
    private void mixed(List<Flag> flags) {
        boolean found = seen.table().columns().stream()
                .filter(column -> column.meaning() == Meaning.FUNCTION
                        || column.meaning() == Meaning.NOTE
                        || column.meaning() == Meaning.PHASE
                        || column.meaning().names())
                .filter(column -> !seen.isDecided(column))
                .map(seen::content)
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
        for (Row line : seen.lines()) {
            boolean next = seen.figure(line).isNumber()
                    && seen.figure(line).middle().subtract(before).compareTo(BigDecimal.ONE) == 0;
            before = seen.figure(line).middle();
            run = next ? run + 1 : 0;
            if (run == 3) {
                flags.add(
                        Flag.doubt("Amounts that go up by 1 from line to line are perhaps the numbers of the lines."));
                return;
            }
        }
    }
}
