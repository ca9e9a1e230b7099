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
    private static final BigDecimal ONE_PART = new BigDecimal("0.0005");
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
            }
        }
        totalsByValue(flags);
        aboveFirst(flags);
        if (lines().size() == 1) {
            flags.add(Flag.doubt("There is one line only; this is perhaps no formula."));
        }
        return flags;
    }

    /**
     * What was left out right below a line and may be an ingredient.
     *
     * @param line its place in the segment
     */
    Optional<Flag> below(int line) {
        int i = line + 1;
        return i < segment.size() && isNameLost(i)
                ? Optional.of(Flag.doubt("Row " + (segment.get(i).place() + 1) + " below (\""
                        + segment.get(i).text() + "\") was left out; it may be an ingredient without an amount."))
                : Optional.empty();
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
        String name = row.names().isEmpty() ? row.text() : row.names().get(0);
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

    /** A remark right above the first line of a formula that shows no phases may be the name of the first. */
    private void aboveFirst(List<Flag> flags) {
        int first = firstLine();
        boolean phases = segment.stream()
                .anyMatch(row -> row.kind() == RowKind.PHASE
                        || row.kind() == RowKind.LINE && !row.phase().isEmpty());
        if (first < 1 || first >= segment.size() || phases || !table.phase().isEmpty()) {
            return;
        }
        Row above = segment.get(first - 1);
        boolean unread = above.kind() == RowKind.NOTE
                && !RowWords.isFact(above.text())
                && (RowWords.isLettered(above.text()) || !Talk.is(above.text()));
        if (unread && terms.guidance().rows().get(above.place()) == null) {
            flags.add(Flag.doubt(
                    "\"" + above.text() + "\" above the first line was left out; it may be the name of a phase."));
        }
    }

    private void totalsByValue(List<Flag> flags) {
        segment.stream()
                .filter(row -> row.kind() == RowKind.TOTAL
                        && !row.names().isEmpty()
                        && !RowWords.isTotal(row.names().get(0))
                        && !RowWords.isTotal(row.text())
                        && terms.guidance().rows().get(row.place()) == null
                        && !isWhole())
                .forEach(row -> flags.add(Flag.doubt("Row " + (row.place() + 1) + " (\"" + row.text()
                        + "\") is taken for the total, as it is the sum of the lines above.")));
    }

    /** Lines that make 100 or 1 by themselves leave no room for a further one. */
    private boolean isWhole() {
        BigDecimal sum = lines().stream().map(row -> figure(row).middle()).reduce(BigDecimal.ZERO, BigDecimal::add);
        return isNear(sum, HUNDRED) || sum.subtract(BigDecimal.ONE).abs().compareTo(ONE_PART) <= 0;
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
