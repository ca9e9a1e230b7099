package stillroom.formulary.imports;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is not proven about the columns of names and phases of a formula. */
record ColumnDoubts(LineColumns seen) {
    /** All that is doubtful about the columns. */
    static List<Flag> of(Table table, List<Row> segment, int main, Terms terms) {
        LineColumns seen = LineColumns.of(table, segment, main, terms);
        List<Flag> flags = new ArrayList<>(new ColumnDoubts(seen).judge());
        flags.addAll(new AmountDoubts(seen).judge());
        return flags;
    }

    private List<Flag> judge() {
        List<Flag> flags = new ArrayList<>();
        names(flags);
        phases(flags);
        inFront(flags);
        codes(flags);
        return flags;
    }

    /** Names are proven by a heading or by most of them being names of materials. */
    private void names(List<Flag> flags) {
        List<Column> names = seen.table().names();
        boolean headed = names.stream().anyMatch(column -> !column.guessed() || seen.isDecided(column));
        boolean known = seen.lines().stream()
                                .filter(row -> row.names().stream()
                                        .anyMatch(seen.terms().knownName()))
                                .count()
                        * 2
                >= seen.lines().size();
        Optional<Column> other = seen.table().columns().stream()
                .filter(column -> column.guessed()
                        && !column.meaning().names()
                        && !seen.isDecided(column)
                        && seen.content(column).isKnown())
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
        return seen.table().columns().stream()
                        .filter(column ->
                                seen.content(column).words() * 2 >= seen.lines().size())
                        .count()
                == 1;
    }

    /** Phases are proven by a heading over texts that group the lines, or by letters and the like. */
    private void phases(List<Flag> flags) {
        seen.table()
                .column(Meaning.PHASE)
                .filter(column -> !seen.isDecided(column))
                .ifPresent(column -> {
                    Content content = seen.content(column);
                    boolean letters =
                            content.isMostlyPhases() || content.runs() && content.phases() * 2 >= content.filled();
                    if (column.guessed() && !letters) {
                        flags.add(Flag.doubt("The column \"" + Grid.letters(column.place())
                                + "\" is taken for the phases, as its texts group the lines."));
                    } else if (!letters && content.distinct() > 1 && (!content.runs() || content.known() > 1)) {
                        flags.add(Flag.doubt("The texts under \"" + column.heading()
                                + "\" do not group the lines; they are perhaps no phases."));
                    }
                });
        if (!hasPhases()) {
            seen.table().columns().stream()
                    .filter(column -> column.guessed()
                            && !seen.isDecided(column)
                            && (column.meaning() == Meaning.LEFT_OUT || column.meaning() == Meaning.NOTE)
                            && isPerhapsPhases(seen.content(column)))
                    .findFirst()
                    .ifPresent(column -> flags.add(perhapsPhases(column)));
        }
    }

    private boolean hasPhases() {
        int last = seen.lines().stream().mapToInt(Row::place).max().orElse(-1);
        return seen.table().column(Meaning.PHASE).isPresent()
                || seen.segment().stream().anyMatch(row -> row.kind() == RowKind.PHASE && row.place() <= last);
    }

    private static boolean isPerhapsPhases(Content content) {
        return content.isGrouping() && content.words() + content.phases() > 0 && content.figures() == 0;
    }

    private static Flag perhapsPhases(Column column) {
        return Flag.doubt("The column \"" + Grid.letters(column.place()) + "\" was left out; it may hold the phases.");
    }

    /** Words in front of the names, or numbers that group the lines, of which nothing was made: perhaps phases. */
    private void inFront(List<Flag> flags) {
        int nameAt = seen.table().names().stream().mapToInt(Column::place).min().orElse(0);
        for (Column column : seen.table().columns()) {
            boolean unread = column.meaning() == Meaning.LEFT_OUT
                    || column.meaning() == Meaning.NOTE
                    || column.meaning() == Meaning.AMOUNT;
            boolean coded = seen.content(column).isCodes()
                    && seen.content(column).distinct() * 2
                            > seen.content(column).filled();
            boolean read = column.meaning() == Meaning.AMOUNT
                    && seen.content(column).figures() * 2
                            >= seen.content(column).filled();
            boolean words = !coded
                    && !read
                    && column.place() < nameAt
                    && seen.content(column).words() + seen.content(column).phases() > 0
                    && seen.content(column).runs();
            boolean groups = column.meaning() == Meaning.LEFT_OUT
                    && Content.counts(
                            seen.table().grid(),
                            column.place(),
                            seen.lines().stream().map(Row::place).toList());
            if (unread
                    && (words || groups)
                    && !hasPhases()
                    && !seen.terms().guidance().columns().containsKey(column.place())) {
                flags.add(perhapsPhases(column));
            }
        }
    }

    /** Names without words are perhaps the numbers of articles. */
    private void codes(List<Flag> flags) {
        long codes = seen.lines().stream()
                .filter(row -> row.names().stream().noneMatch(name -> name.matches(".*\\p{L}{3}.*")))
                .count();
        if (codes > 1) {
            flags.add(Flag.doubt("What is taken for names looks like numbers of articles."));
        }
    }
}
