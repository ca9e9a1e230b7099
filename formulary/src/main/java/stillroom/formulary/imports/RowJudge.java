package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Decides what a row is: by its words, by its figures, then by the place in which it stands. Not thread-safe. */
final class RowJudge {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final int LOOKED_AT = 60;
    private static final int LONGEST_HEADING = 40;
    private static final Pattern PART_OF_A_LINE = Pattern.compile(
            "[-(]*\\s*(of which|thereof|davon|dont|di cui|de los cuales|do qual|waarvan|heraf|varav)\\b.*");

    private final Table table;
    private final Terms terms;
    private final RowCells cells;
    private final RowsAbove above;
    private final Map<Integer, Row> asLines = new HashMap<>();
    private final Map<Integer, RowKind> sums;
    private final boolean phasesNamed;
    private final int lastLine;
    private boolean inMethod;
    private String phase = "";

    /** @param lines all rows of the table, read as lines */
    RowJudge(Table table, Terms terms, RowCells cells, RowsAbove above, List<Row> lines) {
        this.table = table;
        this.terms = terms;
        this.cells = cells;
        this.above = above;
        lines.forEach(line -> asLines.put(line.place(), line));
        this.sums = sums(lines);
        this.phasesNamed = lines.stream().anyMatch(this::namesPhase);
        this.lastLine = lines.stream()
                .filter(this::isCertainLine)
                .mapToInt(Row::place)
                .max()
                .orElse(-1);
    }

    /** The rows that are sums by their figures, in the first column of amounts that shows any. */
    private Map<Integer, RowKind> sums(List<Row> lines) {
        for (int column = 0; column < table.columns(Meaning.AMOUNT).size(); column++) {
            List<SumRows.Item> items = new ArrayList<>();
            boolean open = false;
            for (Row line : lines) {
                Figure figure = column < line.figures().size() ? line.figures().get(column) : Figure.NOTHING;
                open = open || figure.isAmount() && !figure.isNumber();
                if (figure.isNumber() && !table.heads().contains(line.place()) && !RowWords.isFact(name(line))) {
                    items.add(new SumRows.Item(line.place(), figure.middle(), mayBeSum(line)));
                }
            }
            Map<Integer, RowKind> found = open ? Map.of() : SumRows.of(items);
            if (!found.isEmpty()) {
                return found;
            }
        }
        return Map.of();
    }

    private boolean mayBeSum(Row line) {
        return line.names().isEmpty()
                || line.cas().isEmpty() && line.names().stream().noneMatch(terms.knownName());
    }

    /** A row, or the column of phases in it, that names a phase in a form that can be nothing else. */
    private boolean namesPhase(Row line) {
        boolean column =
                line.hasAmount() && !line.phase().isEmpty() && !line.phase().equals("-");
        String text = line.names().isEmpty() ? line.text() : name(line);
        return column
                || !table.heads().contains(line.place())
                        && (RowWords.isPhaseNumbered(text)
                                || RowWords.isPhaseLetter(text) && text.matches(".*\\p{L}.*"));
    }

    private boolean isCertainLine(Row line) {
        String first = cells.firstText(line.place());
        return line.hasAmount()
                && !line.names().isEmpty()
                && !RowWords.isTotal(first)
                && !RowWords.isTotal(name(line))
                && !RowWords.isFact(first);
    }

    RowKind kind(Row line) {
        RowKind kind = judged(line);
        if (RowWords.isMethod(cells.firstText(line.place())) && !line.hasAmount()) {
            inMethod = true;
        }
        boolean phased = kind == RowKind.LINE && !line.phase().isEmpty();
        phase = kind == RowKind.PHASE ? Folding.of(name(line)) : phased ? Folding.of(line.phase()) : phase;
        return kind;
    }

    private static String name(Row line) {
        return line.names().isEmpty() ? "" : line.names().get(0);
    }

    private RowKind judged(Row line) {
        if (line.text().isEmpty()) {
            return RowKind.BLANK;
        }
        if (inMethod) {
            return RowKind.NOTE;
        }
        boolean known = terms.knownName().test(name(line)) && !RowWords.isPhaseNumbered(name(line));
        RowKind worded = byWords(line, known);
        if (worded != null) {
            return worded;
        }
        RowKind summed = known ? null : sums.get(line.place());
        if (summed != null) {
            return summed;
        }
        if (line.hasAmount() && !name(line).isEmpty() && !known && isTotalByValue(line)) {
            return RowKind.TOTAL;
        }
        if (line.hasAmount()) {
            return name(line).isEmpty() ? unnamed(line) : RowKind.LINE;
        }
        return name(line).isEmpty() ? unnamedText(line) : withoutAmount(line, known);
    }

    /** What the words of a row say; null where they say nothing. */
    private @org.jspecify.annotations.Nullable RowKind byWords(Row line, boolean known) {
        String first = cells.firstText(line.place());
        String name = name(line);
        if (RowWords.isTotal(first) || RowWords.isTotal(name)) {
            return total(line, first, name);
        }
        if (PART_OF_A_LINE.matcher(Folding.of(name)).matches() || RowWords.isList(first)) {
            return RowKind.NOTE;
        }
        if (!known && (RowWords.isFact(first) || RowWords.isFact(name)) && !name.isEmpty()) {
            return RowWords.title(first).isPresent() ? RowKind.TITLE : RowKind.NOTE;
        }
        boolean phaseName = RowWords.isPhase(name)
                || RowWords.isPhaseAlone(name) && headsItsSum(line)
                || RowWords.isPhaseLetter(name) && name.matches(".*\\p{L}.*");
        return !known && phaseName && !isPhraseOfALine(line) ? RowKind.PHASE : null;
    }

    private boolean headsItsSum(Row line) {
        for (int i = 0; i < line.figures().size(); i++) {
            int column = i;
            if (line.figures().get(i).isNumber()
                    && SumRows.isSumOfNext(
                            line.figures().get(i).middle(),
                            figuresBelow(line.place(), column),
                            above.hasSummedPhase() ? 1 : 2)) {
                return true;
            }
        }
        return false;
    }

    private List<BigDecimal> figuresBelow(int place, int column) {
        return IntStream.rangeClosed(place + 1, Math.min(place + LOOKED_AT, table.last()))
                .mapToObj(row -> asLines.get(row))
                .filter(row -> row != null && column < row.figures().size())
                .filter(row -> row.figures().get(column).isNumber())
                .map(row -> row.figures().get(column).middle())
                .toList();
    }

    private RowKind total(Row line, String first, String name) {
        boolean ofPhase = RowWords.isOfAPhase(first)
                || RowWords.isOfAPhase(name)
                || !phase.isEmpty()
                        && (Folding.of(first).endsWith(" " + phase)
                                || Folding.of(name).endsWith(" " + phase));
        return ofPhase || sums.get(line.place()) == RowKind.SUBTOTAL ? RowKind.SUBTOTAL : RowKind.TOTAL;
    }

    /** A column of phases beside it says that this is an ingredient, whatever it is called. */
    private boolean isPhraseOfALine(Row line) {
        return table.column(Meaning.PHASE).isPresent() && !line.phase().isEmpty() && line.hasAmount();
    }

    /** Words that stand in no column of names. */
    private RowKind unnamedText(Row line) {
        boolean explicit = RowWords.isPhaseAlone(line.text())
                || RowWords.isPhaseAlone(line.phase())
                || RowWords.isLettered(line.text());
        boolean band = isBand(line) && (explicit || !phasesNamed && !Talk.is(line.text()));
        if (band && !explicit && table.heads().isEmpty() && !above.hasLine()) {
            return RowKind.TITLE;
        }
        return band || RowWords.isPhaseAlone(line.phase()) ? RowKind.PHASE : RowKind.NOTE;
    }

    private RowKind withoutAmount(Row line, boolean known) {
        String name = name(line);
        boolean unreadable = line.figures().stream().anyMatch(figure -> figure.kind() == Figure.Kind.UNREADABLE);
        if (unreadable && !known && (above.afterTotal() || SumRows.isNear(above.all(), HUNDRED))) {
            return RowKind.NOTE;
        }
        if (unreadable || known) {
            return RowKind.LINE;
        }
        if (RowWords.isPhaseAlone(name)) {
            return RowKind.PHASE;
        }
        if (Talk.is(name)) {
            return RowKind.NOTE;
        }
        boolean sentence = name.length() > LONGEST_HEADING;
        if (isCounted(line) && !sentence) {
            return RowKind.LINE;
        }
        return loneName(line, sentence || name.endsWith(".") || name.matches("\\d+[.)].*"));
    }

    /** A name that is not known without an amount: an ingredient, a phase, a title or a remark, by where it stands. */
    private RowKind loneName(Row line, boolean sentence) {
        boolean alone = isAlone(line);
        boolean more = line.place() < lastLine;
        String first = cells.firstText(line.place());
        if (alone && first.matches("\\d{1,2}\\s*[-–.):]\\s*\\p{L}.{0,30}") && isLineBelow(line.place())) {
            return RowKind.PHASE;
        }
        if (!alone && (!line.cas().isEmpty() || line.names().size() > 1) && more) {
            return RowKind.LINE;
        }
        if (!above.hasLine() && more && table.heads().isEmpty()) {
            return isFirstOfSeveral(line) ? RowKind.PHASE : RowKind.TITLE;
        }
        if (above.afterTotal() && more && alone && !sentence) {
            return RowKind.TITLE;
        }
        if (!more || sentence || !alone) {
            return RowKind.NOTE;
        }
        if (isLineBelow(line.place()) && (isSetOff(line.place()) || above.hasBarePhase() && !phasesNamed)) {
            return RowKind.PHASE;
        }
        return phasesNamed ? RowKind.NOTE : RowKind.LINE;
    }

    /** Right above a line, with another such name further down and no whole formula between: phases and no titles. */
    private boolean isFirstOfSeveral(Row line) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int place = line.place() + 1; isLineBelow(line.place()) && place <= lastLine; place++) {
            Row row = asLines.get(place);
            if (row == null) {
                continue;
            }
            if (isCertainLine(row)) {
                boolean fills = row.figures().stream().anyMatch(figure -> figure.kind() == Figure.Kind.TO_WHOLE);
                sum = fills ? HUNDRED : sum.add(row.figures().get(0).middle());
            } else if (isAlone(row) && !row.names().isEmpty() && !Talk.is(name(row)) && isLineBelow(place)) {
                return !SumRows.isNear(sum, HUNDRED);
            }
        }
        return false;
    }

    /** Whether the columns of phases or of numbers count this row among the ingredients. */
    private boolean isCounted(Row line) {
        boolean phased = !line.phase().isEmpty() && !line.phase().equals("-");
        boolean number = !table.text(line.place(), Meaning.NUMBER).isEmpty();
        return (phased || number) && !above.afterTotal() && above.hasLine();
    }

    /** One text in front of the column of names, right above a line: the name of a phase over the width of the table. */
    private boolean isBand(Row line) {
        int nameAt = table.names().isEmpty() ? 0 : table.names().get(0).place();
        String first = cells.firstText(line.place());
        boolean inFront = IntStream.range(0, nameAt)
                .anyMatch(place -> table.grid().cell(line.place(), place).text().equals(first));
        return !first.isEmpty() && inFront && line.text().equals(first) && isLineBelow(line.place());
    }

    /** Whether a row looks like a heading: the first one, or after an empty row, or ended by a colon. */
    private boolean isSetOff(int place) {
        String first = cells.firstText(place);
        return !above.hasLine()
                || above.endsWith(RowKind.BLANK)
                || above.endsWith(RowKind.SUBTOTAL)
                || first.endsWith(":")
                || first.equals(first.toUpperCase(Locale.ROOT));
    }

    private boolean isAlone(Row line) {
        return table.columns().stream()
                        .filter(column ->
                                !table.grid().cell(line.place(), column.place()).isBlank())
                        .count()
                == 1;
    }

    private boolean isLineBelow(int place) {
        Row next = asLines.get(place + 1);
        return next != null && next.hasAmount() && !next.names().isEmpty();
    }

    /** A figure without a name: the sum of what stands above, or something that was forgotten. */
    private RowKind unnamed(Row line) {
        for (int i = 0; i < line.figures().size(); i++) {
            Figure figure = line.figures().get(i);
            if (!figure.isNumber()) {
                continue;
            }
            if (SumRows.isNear(figure.middle(), above.sinceTotal(i))) {
                return RowKind.TOTAL;
            }
            if (SumRows.isNear(figure.middle(), above.sincePhase(i))) {
                return RowKind.SUBTOTAL;
            }
            if (SumRows.isNear(figure.middle(), HUNDRED) && above.fillsUp(i)) {
                return RowKind.TOTAL;
            }
        }
        return RowKind.LINE;
    }

    /** As much as all lines above together, and not what fills them up to 100: a total, in whatever language. */
    private boolean isTotalByValue(Row line) {
        if (above.lines() < 3) {
            return false;
        }
        for (int i = 0; i < line.figures().size(); i++) {
            Figure figure = line.figures().get(i);
            BigDecimal sum = above.sinceTotal(i);
            BigDecimal both = sum.add(figure.middle());
            if (SumRows.isNear(figure.middle(), HUNDRED) && above.fillsUp(i)) {
                return true;
            }
            boolean fills = SumRows.isNear(both, HUNDRED) || SumRows.isNear(both, BigDecimal.ONE);
            if (figure.kind() == Figure.Kind.EXACT && SumRows.isNear(figure.middle(), sum) && !fills) {
                return true;
            }
        }
        return false;
    }
}
